using System.Text.Json;
using System.Text.Json.Serialization;
using Practice.Domain.Quantities;

namespace Practice.Store.Documents;

/// <summary>A body mass as its number of kilograms.</summary>
internal sealed class BodyMassJson : JsonConverter<BodyMass>
{
    public override BodyMass Read(
        ref Utf8JsonReader reader,
        Type typeToConvert,
        JsonSerializerOptions options
    ) => BodyMass.OfKilograms(reader.GetDecimal());

    public override void Write(
        Utf8JsonWriter writer,
        BodyMass value,
        JsonSerializerOptions options
    ) => writer.WriteNumberValue(value.Kilograms);
}
