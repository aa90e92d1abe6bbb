using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Serialization.SystemTextJson;

namespace Practice.Store.Documents;

/// <summary>How a document is written into a column. Stored documents outlive the code: names never change.</summary>
public static class StoredJson
{
    public static JsonSerializerOptions Options { get; } = Make();

    private static JsonSerializerOptions ForPeople { get; } = new(Options) { WriteIndented = true };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <summary>The same with line ends, for people.</summary>
    public static byte[] WriteForPeople(IReadOnlyDictionary<string, object?> facts) =>
        JsonSerializer.SerializeToUtf8Bytes(facts, ForPeople);

    public static T Read<T>(string json) =>
        JsonSerializer.Deserialize<T>(json, Options)
        ?? throw new JsonException($"A stored {typeof(T).Name} reads as null.");

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.General)
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            // totals, names and the like are worked out again from what is stored
            IgnoreReadOnlyProperties = true,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Converters =
            {
                new JsonStringEnumConverter(allowIntegerValues: false),
                new BodyMassJson(),
                new SortedSetJson(),
                new SymptomJson(),
            },
        };
        options.ConfigureForNodaTime(DateTimeZoneProviders.Tzdb);
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
