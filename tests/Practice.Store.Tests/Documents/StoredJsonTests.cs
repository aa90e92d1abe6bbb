using System.Collections;
using System.Reflection;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Store.Documents;

namespace Practice.Store.Tests.Documents;

public class StoredJsonTests
{
    [Fact]
    public void A_plan_reads_back_as_it_was_written()
    {
        var plan = Sample.Plan();
        var json = StoredJson.Write(plan);
        Assert.Equivalent(plan, StoredJson.Read<RaceWeekPlan>(json), strict: true);
        Assert.Equal(json, StoredJson.Write(StoredJson.Read<RaceWeekPlan>(json)));
    }

    [Fact]
    public void The_sample_plan_leaves_nothing_at_its_default_so_that_nothing_can_get_lost_unseen() =>
        Assert.Empty(Unset(Sample.Plan(), "plan"));

    [Fact]
    public void What_can_be_worked_out_is_not_stored()
    {
        var json = StoredJson.Write(Sample.Plan());
        Assert.DoesNotContain("totals", json, StringComparison.Ordinal);
        Assert.DoesNotContain("\"grams\":105", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Trailing_zeros_of_a_measured_value_stay() =>
        Assert.Contains(
            "\"bodyMass\":61.40",
            StoredJson.Write(Sample.Plan()),
            StringComparison.Ordinal
        );

    [Fact]
    public void The_same_set_is_the_same_text()
    {
        var one = new Tastes { Likes = ["rice", "banana", "bagel"] };
        var other = new Tastes { Likes = ["bagel", "rice", "banana"] };
        Assert.Equal(StoredJson.Write(one), StoredJson.Write(other));
    }

    /// <summary>Paths of settable properties that hold their type's default.</summary>
    private static IEnumerable<string> Unset(object value, string path)
    {
        if (value is IEnumerable items and not string)
        {
            var all = items.Cast<object>().ToList();
            return all.Count == 0
                ? [path]
                : all.SelectMany((item, i) => Unset(item, $"{path}[{i}]"));
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
                    var set => Unset(set, $"{path}.{p.Name}"),
                }
            );
    }
}
