using System.Text.Json.Nodes;
using Practice.Domain.Clients;
using Practice.Domain.Foods.Own;
using Practice.Domain.Plans;
using Practice.Store.Documents;
using Practice.TestSupport;

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
        Assert.Empty(Unset.In(Sample.Plan(), "plan"));

    [Fact]
    public void A_food_that_a_practice_wrote_down_reads_back_as_it_was_written()
    {
        var sheet = SampleFood.Bar;
        Assert.Equivalent(sheet, StoredJson.Read<FoodSheet>(StoredJson.Write(sheet)), strict: true);
        Assert.Empty(Unset.In(sheet, "sheet"));
        Assert.Null(
            StoredJson.Read<FoodSheet>(StoredJson.Write(sheet with { Allergens = null })).Allergens
        );
    }

    [Fact]
    public void What_can_be_worked_out_is_not_stored()
    {
        // the hours of a course keep their totals: they were counted when it was planned
        var json = StoredJson.Write(Sample.Plan() with { Course = null });
        Assert.DoesNotContain("totals", json, StringComparison.Ordinal);
        Assert.DoesNotContain("\"grams\":105", json, StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_from_before_there_were_race_weeks_still_opens()
    {
        var plan = Sample.Plan();
        var older = JsonNode.Parse(StoredJson.Write(plan))!.AsObject();
        Assert.True(older.Remove("week"));
        var read = StoredJson.Read<RaceWeekPlan>(older.ToJsonString());
        Assert.Null(read.Week);
        Assert.Equal(read.Days, read.EveryDay);
        Assert.Equivalent(plan with { Week = null }, read, strict: true);
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
}
