using System.Collections.Immutable;
using System.Text.Json;

namespace Practice.Domain.Foods;

/// <summary>The fields of one JSON object of a food. Every complaint names the food and the field.</summary>
internal sealed class FoodFields(string id, string path, JsonElement element)
{
    private readonly HashSet<string> read = new(StringComparer.Ordinal);

    public IEnumerable<string> Names => element.EnumerateObject().Select(entry => entry.Name);

    public static InvalidDataException Fault(string id, string field, string wrong) =>
        new($"Food '{id}', field '{field}': {wrong}.");

    public string Text(string field) =>
        TextOrNull(field) ?? throw Fault(id, path + field, "is missing");

    public string? TextOrNull(string field) =>
        Find(field) is not { } value ? null
        : value.ValueKind == JsonValueKind.String && !string.IsNullOrWhiteSpace(value.GetString())
            ? value.GetString()
        : throw Fault(id, path + field, "is not a text");

    public decimal Number(string field) =>
        NumberOrNull(field) ?? throw Fault(id, path + field, "is missing");

    public decimal? NumberOrNull(string field) =>
        Find(field) is not { } value ? null
        : value.ValueKind == JsonValueKind.Number ? value.GetDecimal()
        : throw Fault(id, path + field, "is not a number");

    public bool Flag(string field) => Find(field) is { ValueKind: JsonValueKind.True };

    public T One<T>(string field)
        where T : struct, Enum => Parse<T>(field, Text(field));

    public T? OneOrNull<T>(string field)
        where T : struct, Enum => TextOrNull(field) is { } text ? Parse<T>(field, text) : null;

    public ImmutableArray<T> Several<T>(string field)
        where T : struct, Enum =>
        [.. Items(field).Select(item => Parse<T>(field, item.GetString() ?? ""))];

    /// <summary>The name of a field, where names themselves are words of the trade.</summary>
    public T Name<T>(string field)
        where T : struct, Enum => Parse<T>(field, field);

    public IEnumerable<JsonElement> Items(string field) =>
        Find(field) is not { } value ? []
        : value.ValueKind == JsonValueKind.Array ? value.EnumerateArray()
        : throw Fault(id, path + field, "is not a list");

    public FoodFields Part(string field) =>
        PartOrNull(field) ?? throw Fault(id, path + field, "is missing");

    public FoodFields? PartOrNull(string field) =>
        Find(field) is { ValueKind: JsonValueKind.Object } value
            ? new(id, $"{path}{field}.", value)
            : null;

    public IEnumerable<FoodFields> Parts(string field) =>
        Items(field).Select(item => new FoodFields(id, $"{path}{field}.", item));

    /// <summary>Complains of a field that nobody asked for.</summary>
    public void Finish()
    {
        foreach (var name in Names.Where(name => !read.Contains(name)))
        {
            throw Fault(id, path + name, "is not a field of the library");
        }
    }

    private JsonElement? Find(string field)
    {
        read.Add(field);
        return element.TryGetProperty(field, out var value) ? value : null;
    }

    private T Parse<T>(string field, string text)
        where T : struct, Enum =>
        Enum.TryParse<T>(text, out var value) && Enum.IsDefined(value)
            ? value
            : throw Fault(id, path + field, $"'{text}' is not one of {typeof(T).Name}");
}
