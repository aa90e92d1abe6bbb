using Practice.Domain.Evidence;
using Practice.Domain.Physiology;

namespace Practice.Domain.Targets;

/// <summary>Carbohydrate of a full day and of the whole window, each with the tenth that counts as met. Checks T01, T05.</summary>
internal static class CarbohydrateAmounts
{
    private const decimal Least = 0.9m;
    private const decimal Most = 1.1m;
    private const decimal RaceBreakfastHoursBefore = 3;

    public static Target PerDay(LoadingCase loading, Target rate)
    {
        var computed = rate.Aim!.Value * loading.MassKg;
        var own = loading.OverrideOf(TargetKeys.CarbohydratePerDay, computed);
        var aim = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.CarbohydratePerDay,
            Name = "Carbohydrate, full day",
            Aim = aim,
            Low = aim * Least,
            High = aim * Most,
            Unit = "g/day",
            Override = own,
            Basis = new Basis(
                "rate × body mass",
                [new("Rate", TargetWords.Aim(rate)), loading.MassInput],
                [Sources.Thomas2016, Sources.WithinATenth],
                "Available carbohydrate: fibre is not counted."
            ),
        };
    }

    public static Target Total(LoadingCase loading, Target perDay, int windowHours)
    {
        var computed = perDay.Aim!.Value * windowHours / 24;
        var own = loading.OverrideOf(TargetKeys.CarbohydrateTotal, computed);
        var aim = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.CarbohydrateTotal,
            Name = "Carbohydrate, whole window",
            Aim = aim,
            Low = aim * Least,
            High = aim * Most,
            Unit = "g",
            Override = own,
            Basis = new Basis(
                "carbohydrate of a full day × hours / 24",
                [
                    new("Full day", TargetWords.Aim(perDay)),
                    BasisInput.Of("Loading window", (decimal)windowHours, "h"),
                    BasisInput.Of(
                        "Of which race breakfast, 3 h before the start",
                        PreRaceMeal.CarbohydrateG(loading.MassKg, RaceBreakfastHoursBefore),
                        "g"
                    ),
                ],
                [
                    Sources.Thomas2016,
                    Sources.WindowLength,
                    Sources.RaceBreakfast,
                    Sources.Sherman1981,
                    Sources.Bussau2002,
                    Sources.WithinATenth,
                ],
                "No depletion beforehand is needed."
            ),
        };
    }
}
