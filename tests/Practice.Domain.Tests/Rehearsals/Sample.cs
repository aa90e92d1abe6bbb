using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Domain.Tests.Plans;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>A plan of toast for 70 kg at 10 g/kg over 36 h, and a full rehearsal of it.</summary>
internal static class Sample
{
    public static readonly LocalDate RunOn = new(2027, 3, 28);

    public static readonly RehearsalDetails Full = new()
    {
        RunOn = RunOn,
        Kind = RehearsalKind.Full,
        Part = new RehearsedPart(Guid.Empty, 2),
    };

    public static RaceWeekPlan Plan()
    {
        var header = new PlanHeader
        {
            ClientName = "Ines Example",
            BodyMass = BodyMass.OfKilograms(70),
            RaceName = "Harbour Marathon",
            DistanceKm = 42.195m,
            RaceStart = new LocalDateTime(2027, 4, 18, 9, 0),
            ZoneId = "Europe/London",
        };
        var (targets, choices) = (SampleTargets.At(700), new LoadingChoices());
        var days = LoadingLayout.Days(
            header.RaceStart,
            header.BodyMass,
            choices,
            targets,
            Adjustments.None
        );
        return new RaceWeekPlan
        {
            Header = header,
            Choices = choices,
            Targets = targets,
            Days = [.. days.Select(Toast)],
            Fluids = PlanAdvice.Fluids(Adjustments.None),
            Cautions = [],
            Why = PlanAdvice.Why(header, targets, Adjustments.None),
        };
    }

    public static RehearsalReview Review(
        Func<RehearsedSitting, EatenOccasion?> eat,
        Feedback? feedback = null,
        RehearsalDetails? details = null,
        RaceWeekPlan? plan = null
    )
    {
        var (booked, rehearsed) = (details ?? Full, plan ?? Plan());
        var told = (feedback ?? new Feedback { ReceivedAt = default }) with
        {
            Occasions =
            [
                .. booked
                    .Part.Sittings(rehearsed, booked.RunOn, booked.Dose)
                    .Select(eat)
                    .OfType<EatenOccasion>(),
            ],
        };
        return RehearsalReview.Of(booked, rehearsed, told, SymptomThresholds.House);
    }

    private static PlanDay Toast(PlanDay day) =>
        day with
        {
            Occasions =
            [
                .. day.Occasions.Select(o =>
                    o with
                    {
                        Portions = [Portion.Of(SampleFood.Toast, MealRole.Bread, 2)],
                    }
                ),
            ],
        };
}
