using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Tests.Rehearsals;

/// <summary>A rehearsal with every field set.</summary>
internal static class SampleRehearsal
{
    public static RehearsalDetails Details() =>
        new()
        {
            RunOn = new LocalDate(2026, 9, 20),
            Kind = RehearsalKind.Full,
            Part = new RehearsedPart(Guid.CreateVersion7(), 2, 1, OccasionKind.Lunch),
            Dose = 0.85m,
            Breakfast = new BreakfastTrial(2.5m, 120, "Porridge and juice"),
            RunFuel = new RunFuelTrial(60, 500, "A gel every half hour"),
            Reason = "White rice for pasta",
        };

    public static Feedback Feedback() =>
        new()
        {
            ReceivedAt = Sample.Now,
            Occasions = [Eaten()],
            BreakfastPart = 0.75m,
            Symptoms =
            [
                new Symptom(SymptomItem.Nausea, SymptomMoment.During, 6, 45),
                new Symptom(SymptomItem.LowerBloating, SymptomMoment.DayAfter, 0),
            ],
            WarningSigns = [WarningSign.BloodInStool, WarningSign.ChestPain],
            Vomited = true,
            FluidMl = 2500,
            MassBefore = BodyMass.OfKilograms(61.40m),
            MassAfter = BodyMass.OfKilograms(60.2m),
            UrineColour = 4,
            SleepHours = 7.5m,
            IllOrPeriod = true,
            Run = new RunFeedback
            {
                DistanceKm = 26.5m,
                Time = Duration.FromMinutes(150),
                AtRaceEffort = Duration.FromMinutes(95),
                CarbohydrateG = 140,
                FluidMl = 1100,
                CaffeineMg = 100,
                WetBulbGlobeC = 18.5m,
                StoppedByGut = true,
                Note = "Windy",
            },
            Note = "Never again.",
        };

    public static ReviewDecision Decision() =>
        new(TrialVerdict.Adapt, "A. Tester", Sample.Now, "One thing at a time")
        {
            Answers = [new ProposalAnswer("halve-food", "Half of the banana", true)],
            Thresholds = new SymptomThresholds(1, 4),
            PlanVersionId = Guid.CreateVersion7(),
            FromVersionId = Guid.CreateVersion7(),
        };

    public static Rehearsal Booked(Race race, LocalDate? runOn = null) =>
        Rehearsal.Book(
            race.PracticeId,
            race.ClientId,
            race.Id,
            Details() with
            {
                RunOn = runOn ?? new LocalDate(2026, 9, 20),
            },
            Sample.Plan()
        );

    private static EatenOccasion Eaten()
    {
        var portion = Sample.Plan().Days[0].Occasions[0].Portions[0];
        return new(
            new LocalDate(2026, 9, 18),
            OccasionKind.Breakfast,
            [EatenPortion.Replaced("bagel-plain", portion) with { Part = 0.5m, Words = "toast" }],
            [portion]
        );
    }
}
