using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;

namespace Practice.Domain.Targets;

/// <summary>Carbohydrate per kilogram in 24 h. The guideline sets it; no model overrides it. Checks T03, T04.</summary>
internal static class CarbohydrateRateTarget
{
    public static Target Of(LoadingCase loading, bool loads)
    {
        var range = CarbohydrateRange.For(loading, loads);
        var chosen = loading.Choices.CarbohydrateGPerKg;
        var computed = Math.Min(chosen ?? range.Start, range.High);
        var own = loading.OverrideOf(TargetKeys.CarbohydrateRate, computed);
        var aim = own?.Value ?? computed;
        var topsUp = !loads || aim < CarbohydrateRange.LeastLoading;
        return new Target
        {
            Key = TargetKeys.CarbohydrateRate,
            Name = topsUp ? "Carbohydrate rate (topping up)" : "Carbohydrate rate",
            Aim = aim,
            Low = range.Low,
            High = range.High,
            Unit = "g/kg/day",
            Decimals = 1,
            Override = own,
            Basis = new Basis(
                range.Formula,
                Inputs(loading, range, loads),
                [.. range.References, .. AboutWomen(loading)],
                Note(loading, range, aim, loads)
            ),
        };
    }

    private static ImmutableArray<BasisInput> Inputs(
        LoadingCase loading,
        CarbohydrateRange range,
        bool loads
    )
    {
        var inputs = ImmutableArray.CreateBuilder<BasisInput>();
        inputs.Add(BasisInput.Of("Where the rule starts", range.Start, "g/kg/day", 1));
        if (loading.Choices.CarbohydrateGPerKg is { } chosen)
            inputs.Add(BasisInput.Of("Chosen by the practitioner", chosen, "g/kg/day", 1));
        if (loads && BodyFatRule.Concerns(loading))
            inputs.Add(BasisInput.Of("Fat-free mass", BodyFatRule.FatFreeKg(loading), "kg", 1));
        return inputs.ToImmutable();
    }

    private static ImmutableArray<Source> AboutWomen(LoadingCase loading) =>
        loading.Physique.Sex == Sex.Female ? [Sources.Tarnopolsky1995, Sources.Sedlock2008] : [];

    private static string? Note(
        LoadingCase loading,
        CarbohydrateRange range,
        decimal aim,
        bool loads
    )
    {
        var notes = Notes(loading, range, aim, loads).ToList();
        return notes.Count == 0 ? null : string.Join(' ', notes);
    }

    private static IEnumerable<string> Notes(
        LoadingCase loading,
        CarbohydrateRange range,
        decimal aim,
        bool loads
    )
    {
        if (!loads)
            yield return "The event is expected to take less than 90 min: top up on the day before, do not load.";
        else if (aim < CarbohydrateRange.LeastLoading)
            yield return "Below 7 g/kg this is topping up, not loading.";
        if (loading.Choices.CarbohydrateGPerKg > range.High)
            yield return "The rate chosen is above the range and was held to its upper end.";
        if (aim > range.High)
            yield return "The practitioner's own value stands above the range.";
        if (loads && BodyFatRule.Concerns(loading) && loading.Physique.BodyFatPercent is null)
            yield return "Fat-free mass is estimated from mass and height (Boer 1984), poor for athletes: measure body fat.";
        if (loads && loading.Physique.Sex == Sex.Female && aim <= 8)
            yield return "Trials in which women's glycogen did not rise fed them about 6 g/kg: aim above 8 g/kg, or at 10 g/kg of lean mass, where it can be eaten.";
    }
}
