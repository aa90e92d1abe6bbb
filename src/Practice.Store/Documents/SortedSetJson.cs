using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Practice.Store.Documents;

/// <summary>Writes sets in order: the same set is the same text, whatever a process makes of hash codes.</summary>
internal sealed class SortedSetJson : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert.IsGenericType
        && typeToConvert.GetGenericTypeDefinition() == typeof(ImmutableHashSet<>);

    public override JsonConverter CreateConverter(
        Type typeToConvert,
        JsonSerializerOptions options
    ) =>
        (JsonConverter)
            Activator.CreateInstance(
                typeof(Of<>).MakeGenericType(typeToConvert.GetGenericArguments())
            )!;

    private sealed class Of<T> : JsonConverter<ImmutableHashSet<T>>
    {
        private static readonly Comparer<T> Order =
            typeof(T) == typeof(string)
                ? (Comparer<T>)(object)Comparer<string>.Create(string.CompareOrdinal)
                : Comparer<T>.Default;

        public override ImmutableHashSet<T> Read(
            ref Utf8JsonReader reader,
            Type typeToConvert,
            JsonSerializerOptions options
        ) => [.. JsonSerializer.Deserialize<T[]>(ref reader, options)!];

        public override void Write(
            Utf8JsonWriter writer,
            ImmutableHashSet<T> value,
            JsonSerializerOptions options
        ) => JsonSerializer.Serialize(writer, value.Order(Order), options);
    }
}
