using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Races;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>What the race costs, each discipline by its own relation; none where a fact it needs is missing.</summary>
internal static class CourseEnergyTarget
{
    // costs differ by a tenth between athletes of one speed (docs/science.md, default bands)
    private const decimal Band = 0.1m;

    public static Target Of(CourseCase course)
    {
        var (kcal, basis) = course.Discipline switch
        {
            Discipline.Cycling => Cycling(course),
            Discipline.Triathlon => Triathlon(course),
            Discipline.Walking => Walking(course),
            _ => Running(course),
        };
        var own = course.OverrideOf(CourseTargetKeys.Energy, kcal);
        var aim = own?.Value ?? kcal;
        return new Target
        {
            Key = CourseTargetKeys.Energy,
            Name = "Energy of the race",
            Aim = aim,
            Low = aim * (1 - Band),
            High = aim * (1 + Band),
            Unit = "kcal",
            Override = own,
            Basis = basis,
        };
    }

    private static (decimal?, Basis) Running(CourseCase course)
    {
        var flat = PaceLine.FlatEquivalentKm(course.Profile, course.Discipline);
        return (
            (decimal)RunningEnergy.NetKcal((double)course.MassKg, (double)flat),
            new Basis(
                "1 kcal per kg and km of the level that costs the same, net of rest",
                Inputs(course, flat),
                [Sources.Rapoport2010, Sources.Minetti2002, Sources.EvenEffort],
                Heights(course)
            )
        );
    }

    private static (decimal?, Basis) Walking(CourseCase course)
    {
        var flat = PaceLine.FlatEquivalentKm(course.Profile, course.Discipline);
        return (
            (decimal)
                WalkingEnergy.NetKcal(
                    (double)course.MassKg,
                    (double)course.Choices.LoadKg,
                    (double)flat
                ),
            new Basis(
                "0.5 kcal per kg and km of the level that costs the same, body and load, net of rest",
                [
                    .. Inputs(course, flat),
                    BasisInput.Of("Load carried", course.Choices.LoadKg, "kg", 1),
                ],
                [Sources.WalkingEquation, Sources.Minetti2002, Sources.EvenEffort],
                Heights(course)
            )
        );
    }

    private static (decimal?, Basis) Cycling(CourseCase course) =>
        (
            course.Choices.BikeWatts is { } watts
                ? (decimal)CyclingEnergy.Kcal((double)watts, (double)course.Hours)
                : null,
            new Basis(
                "average power × time ÷ gross efficiency 0.22",
                [.. Watts(course), BasisInput.Of("Time planned", course.Hours, "h", 2)],
                [Sources.CyclingWork],
                course.Choices.BikeWatts is null
                    ? "Enter the average power: without it there is no figure."
                    : null
            )
        );

    private static (decimal?, Basis) Triathlon(CourseCase course)
    {
        var inputs = ImmutableArray.CreateBuilder<BasisInput>();
        decimal? kcal = null;
        if (course.Choices is { Legs: { SwimKcalPerHour: { } swim } legs, BikeWatts: { } watts })
        {
            var run = course.Profile.DistanceKm - legs.SwimKm - legs.BikeKm;
            kcal =
                swim * (decimal)legs.Swim.TotalHours
                + (decimal)CyclingEnergy.Kcal((double)watts, legs.Bike.TotalHours)
                + (decimal)RunningEnergy.NetKcal((double)course.MassKg, (double)run);
            inputs.Add(BasisInput.Of("Swim", swim, "kcal/h"));
            inputs.AddRange(Watts(course));
            inputs.Add(BasisInput.Of("Run", run, "km", 1));
        }
        return (
            kcal,
            new Basis(
                "swim as entered + bike by power + run at 1 kcal per kg and km",
                inputs.ToImmutable(),
                [Sources.CyclingWork, Sources.Rapoport2010],
                kcal is null
                    ? "Enter the legs, the power on the bike and the energy of the swim: no equation here is good enough for it."
                    : null
            )
        );
    }

    private static ImmutableArray<BasisInput> Inputs(CourseCase course, decimal flat) =>
        [
            BasisInput.Of("Body mass", course.MassKg, "kg", 1),
            BasisInput.Of("Distance", course.Profile.DistanceKm, "km", 1),
            BasisInput.Of("On the level that would be", flat, "km", 1),
        ];

    private static IEnumerable<BasisInput> Watts(CourseCase course) =>
        course.Choices.BikeWatts is { } watts ? [BasisInput.Of("Average power", watts, "W")] : [];

    private static string? Heights(CourseCase course) =>
        course.Profile.HasElevation
            ? null
            : "Slopes are not known: the climb is not in this figure. A GPX file with heights would bring it.";
}
