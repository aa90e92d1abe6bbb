using System.Collections;
using System.Reflection;

namespace Practice.Store.Tests.Documents;

/// <summary>Finds what a sample leaves at its default: what is not set can get lost unseen.</summary>
internal static class Unset
{
    /// <summary>Paths of settable properties that hold their type's default.</summary>
    public static IEnumerable<string> In(object value, string path)
    {
        if (value is IEnumerable items and not string)
        {
            var all = items.Cast<object>().ToList();
            return all.Count == 0 ? [path] : all.SelectMany((item, i) => In(item, $"{path}[{i}]"));
        }

        var type = value.GetType();
        if (type.Namespace?.StartsWith("Practice.Domain", StringComparison.Ordinal) != true)
            return [];
        return type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.CanWrite && p.GetIndexParameters().Length == 0)
            .SelectMany(p =>
                p.GetValue(value) switch
                {
                    null => [$"{path}.{p.Name}"],
                    "" => [$"{path}.{p.Name}"],
                    false => [$"{path}.{p.Name}"],
                    var set => In(set, $"{path}.{p.Name}"),
                }
            );
    }
}
