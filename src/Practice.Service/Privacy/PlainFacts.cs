using System.Reflection;
using System.Text.Json;

namespace Practice.Service.Privacy;

/// <summary>
/// All that is stored of a thing, by name. Read off the thing itself, so that a field added later is in the export
/// without anybody thinking of it.
/// </summary>
internal static class PlainFacts
{
    public static IReadOnlyDictionary<string, object?> Of(object thing) =>
        thing
            .GetType()
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.SetMethod is not null && p.Name != "PracticeId")
            .ToDictionary(
                p => JsonNamingPolicy.CamelCase.ConvertName(p.Name),
                p => p.GetValue(thing)
            );
}
