using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening.Rules;

public class MedicinesTests
{
    private static readonly Adjustments NoCaffeine = new()
    {
        CaffeineMaxMgPerDay = 0,
        CaffeineMaxMgPerIntake = 0,
        NoRaceCaffeine = true,
    };

    /// <summary>Medicine, hold, cautions beyond the general ones, in the order of the published table's rows.</summary>
    public static TheoryData<string, string?, string[]> Rows { get; } =
        new()
        {
            { "insulin", "diabetes-insulin", ["diabetes-glucose-checks", "diabetes-ketones"] },
            { "sulfonylurea-or-glinide", "diabetes-insulin-releasers", ["diabetes-fast-sugar"] },
            { "sglt2-inhibitor", "sglt2-inhibitor", ["sglt2-inhibitor"] },
            { "glp1-agonist", null, ["glp1-energy", "glp1-small-meals"] },
            { "nsaid", null, ["nsaid"] },
            { "diuretic-or-pressure-tablet", null, ["diuretic-potassium", "medicine-heat"] },
            {
                "thiazide",
                null,
                [
                    "diuretic-potassium",
                    "drink-to-thirst",
                    "medicine-heat",
                    "medicine-sodium",
                    "overdrinking-signs",
                ]
            },
            { "ssri", null, ["drink-to-thirst", "medicine-sodium", "overdrinking-signs"] },
            {
                "fluvoxamine",
                null,
                [
                    "caffeine-fluvoxamine",
                    "drink-to-thirst",
                    "medicine-sodium",
                    "no-caffeine",
                    "overdrinking-signs",
                ]
            },
            { "desmopressin", null, ["drink-to-thirst", "medicine-sodium", "overdrinking-signs"] },
            { "carbamazepine", null, ["drink-to-thirst", "medicine-sodium", "overdrinking-signs"] },
            { "lithium", "lithium", ["lithium"] },
            { "ciprofloxacin", null, ["caffeine-cleared-slowly", "caffeine-halved"] },
            { "cimetidine", null, ["caffeine-cleared-slowly", "caffeine-halved"] },
            { "combined-pill", null, ["caffeine-halved", "caffeine-pill"] },
            { "theophylline", null, ["caffeine-clash", "no-caffeine"] },
            { "clozapine", null, ["caffeine-clash", "no-caffeine"] },
            { "mao-inhibitor", null, ["caffeine-clash", "no-caffeine"] },
            { "stimulant", null, ["caffeine-clash", "no-caffeine"] },
            { "warfarin", null, ["warfarin"] },
            { "levothyroxine", null, ["medicine-apart-from-food"] },
            { "iron", null, ["medicine-apart-from-food"] },
            { "tetracycline", null, ["medicine-apart-from-food"] },
            { "beta-blocker", null, ["beta-blocker", "beta-blocker-glucose"] },
            { "opioid", null, ["medicine-gut-and-sweat"] },
            { "anticholinergic", null, ["medicine-gut-and-sweat"] },
            { "antihistamine", null, ["medicine-gut-and-sweat"] },
        };

    // levels: common practice and general knowledge; sources of single rows stand with their rules
    [Theory]
    [MemberData(nameof(Rows))]
    public void Each_medicine_raises_its_own_hold_and_cautions(
        string medicine,
        string? hold,
        string[] cautions
    )
    {
        var outcome = Screened.Taking(Named(medicine));

        Assert.Equal(hold is null ? [] : [hold], outcome.HoldKeys());
        Assert.Equal(cautions, outcome.CautionKeys());
    }

    [Fact]
    public void Every_medicine_that_is_asked_for_has_a_row()
    {
        Assert.Equal(
            Medicines.Taken.Choices.Remove(Choice.NoneOfThese).Select(choice => choice.Key),
            Rows.Select(row => row.Data.Item1)
        );
    }

    // Culm-Merdek 2005: half-life of caffeine 4.9 -> 56 h; theophylline and the like: general knowledge
    [Theory]
    [InlineData("theophylline")]
    [InlineData("clozapine")]
    [InlineData("mao-inhibitor")]
    [InlineData("stimulant")]
    public void Medicines_that_clash_with_caffeine_leave_none(string medicine)
    {
        Screened.Same(NoCaffeine, Screened.Taking(Named(medicine)).Adjustments);
    }

    [Fact]
    public void Fluvoxamine_leaves_no_caffeine_and_no_drinking_plan()
    {
        Screened.Same(
            NoCaffeine with
            {
                ThirstOnly = true,
            },
            Screened.Taking(Medicines.Fluvoxamine).Adjustments
        );
    }

    // cimetidine -31 to 42 % clearance (2023 review); the pill about doubles the half-life (from memory):
    // half of EFSA's 400 mg a day and 200 mg at once
    [Theory]
    [InlineData("ciprofloxacin")]
    [InlineData("cimetidine")]
    [InlineData("combined-pill")]
    public void Medicines_that_slow_caffeine_halve_it(string medicine)
    {
        Screened.Same(
            new() { CaffeineMaxMgPerDay = 200, CaffeineMaxMgPerIntake = 100 },
            Screened.Taking(Named(medicine)).Adjustments
        );
    }

    // general knowledge: low blood sodium
    [Theory]
    [InlineData("thiazide")]
    [InlineData("ssri")]
    [InlineData("desmopressin")]
    [InlineData("carbamazepine")]
    public void Medicines_that_hold_water_back_leave_drinking_to_thirst(string medicine)
    {
        Screened.Same(new() { ThirstOnly = true }, Screened.Taking(Named(medicine)).Adjustments);
    }

    // general knowledge: sodium, fluid and caffeine change the level
    [Fact]
    public void Lithium_leaves_salt_drink_and_caffeine_alone()
    {
        Screened.Same(
            NoCaffeine with
            {
                NoAddedSodium = true,
                ThirstOnly = true,
            },
            Screened.Taking(Medicines.Lithium).Adjustments
        );
    }

    [Fact]
    public void A_medicine_outside_the_list_is_passed_to_the_practitioner_in_the_clients_words()
    {
        var outcome = Screened.Outcome(
            Questionnaire.NothingToReport.WithWords(Medicines.Others, "methotrexate, weekly")
        );

        var caution = outcome.Caution("other-medicines");
        Assert.False(caution.ForClient);
        Assert.Contains("methotrexate, weekly", caution.Text, StringComparison.Ordinal);
    }

    // panic disorder, a doctor's word or choice: zero
    [Fact]
    public void Every_reason_to_leave_caffeine_out_leaves_it_out()
    {
        foreach (var reason in Caffeine.Avoided.Choices.Remove(Choice.NoneOfThese))
        {
            var outcome = Screened.By(Caffeine.Avoided, reason);
            Screened.Same(NoCaffeine, outcome.Adjustments);
            Assert.Equal(["no-caffeine"], outcome.CautionKeys());
        }
        Assert.Equal(4, Caffeine.Avoided.Choices.Length);
    }

    private static Choice Named(string medicine) =>
        Medicines.Taken.Choices.Single(choice => choice.Key == medicine);
}
