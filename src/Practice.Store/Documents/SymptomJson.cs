using System.Text.Json;
using System.Text.Json.Serialization;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Documents;

/// <summary>An answer on the symptom scale. It checks itself when it is made, so it is read through its constructor.</summary>
internal sealed class SymptomJson : JsonConverter<Symptom>
{
    private sealed record Written(
        SymptomItem Item,
        SymptomMoment Moment,
        int Score,
        int? MinutesIntoRun
    );

    public override Symptom Read(
        ref Utf8JsonReader reader,
        Type typeToConvert,
        JsonSerializerOptions options
    )
    {
        var written = JsonSerializer.Deserialize<Written>(ref reader, options)!;
        return new(written.Item, written.Moment, written.Score, written.MinutesIntoRun);
    }

    public override void Write(
        Utf8JsonWriter writer,
        Symptom value,
        JsonSerializerOptions options
    ) =>
        JsonSerializer.Serialize(
            writer,
            new Written(value.Item, value.Moment, value.Score, value.MinutesIntoRun),
            options
        );
}
