using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Store.Rehearsals;

namespace Practice.Service.Demo;

/// <summary>An invented rehearsal: when, how much, and how it went.</summary>
/// <param name="Kind">How much is tried.</param>
/// <param name="Weeks">Sundays from today: -1 for the last one, 0 for the coming one, which may be today.</param>
internal sealed record DemoRehearsal(RehearsalKind Kind, int Weeks)
{
    /// <summary>Worst symptom and its score; null where nothing came back yet.</summary>
    public (SymptomItem Item, int Score)? Worst { get; init; }

    /// <summary>Foods left on the plate: first, second, third ... of the day's drinks and snacks by carbohydrate.</summary>
    public ImmutableArray<int> Left { get; init; } = [];

    /// <summary>Part of the supper that was eaten.</summary>
    public decimal Supper { get; init; } = 1;

    public WarningSign? Sign { get; init; }
    public int RunMinutes { get; init; } = 150;
    public decimal RunKm { get; init; } = 26;
    public decimal FuelG { get; init; } = 130;
    public string Note { get; init; } = "";

    /// <summary>What the practitioner made of it; null where she has not read it.</summary>
    public (TrialVerdict Verdict, string Note)? Decided { get; init; }
}

/// <summary>Files the demo practice's rehearsals beside a plan just made.</summary>
public sealed class DemoRehearsals(RehearsalStore rehearsals, PracticeCalendar calendar)
{
    internal async Task Make(
        Desk desk,
        Guid clientId,
        Guid raceId,
        PlanVersion version,
        ImmutableArray<DemoRehearsal> trials,
        CancellationToken cancel
    )
    {
        foreach (var trial in trials)
        {
            var sunday = calendar.Today.With(DateAdjusters.NextOrSame(IsoDayOfWeek.Sunday));
            var runOn = sunday.PlusWeeks(trial.Weeks);
            var rehearsal = Rehearsal.Book(
                desk.PracticeId,
                clientId,
                raceId,
                UsualRehearsal.Of(RehearsalPlace.On(trial.Kind, runOn), version.Id, version.Plan),
                version.Plan
            );
            if (trial.Worst is not null)
                rehearsal.Tell(Told(rehearsal, trial));
            if (trial.Decided is { } decided)
                rehearsal.Review(new(decided.Verdict, desk.Name, Evening(runOn, 2), decided.Note));
            await rehearsals.Add(
                rehearsal,
                desk.Note("rehearsal-booked", rehearsal.Id, calendar.Now),
                cancel
            );
        }
    }

    private static Feedback Told(Rehearsal rehearsal, DemoRehearsal trial)
    {
        var (item, score) = trial.Worst!.Value;
        var run = Duration.FromMinutes(trial.RunMinutes);
        var mass = rehearsal.Plan.Header.BodyMass.Kilograms;
        return new Feedback
        {
            ReceivedAt = Evening(rehearsal.RunOn, 1),
            Occasions = Eaten(rehearsal, trial),
            BreakfastPart = 1,
            Symptoms = [.. Felt(item, score, trial.RunMinutes)],
            WarningSigns = trial.Sign is { } sign ? [sign] : [],
            FluidMl = 900,
            MassBefore = BodyMass.OfKilograms(Math.Round(mass + 0.9m, 1)),
            MassAfter = BodyMass.OfKilograms(Math.Round(mass - 0.2m, 1)),
            UrineColour = 3,
            SleepHours = score > 4 ? 6 : 7.5m,
            Run = new RunFeedback
            {
                DistanceKm = trial.RunKm,
                Time = run,
                AtRaceEffort = Duration.FromMinutes(trial.RunMinutes / 3),
                CarbohydrateG = trial.FuelG,
                FluidMl = 900,
            },
            Note = trial.Note,
        };
    }

    private static IEnumerable<Symptom> Felt(SymptomItem item, int score, int runMinutes)
    {
        yield return new(SymptomItem.GutDiscomfort, SymptomMoment.Before, Math.Min(score, 2));
        yield return new(item, SymptomMoment.During, score / 2, runMinutes / 3);
        yield return new(item, SymptomMoment.During, score, 2 * runMinutes / 3);
        yield return new(item, SymptomMoment.End, score * 2 / 3);
        yield return new(SymptomItem.LowerBloating, SymptomMoment.TwoHoursAfter, score / 3);
        yield return new(item, SymptomMoment.DayAfter, 0);
    }

    private static ImmutableArray<EatenOccasion> Eaten(Rehearsal rehearsal, DemoRehearsal trial)
    {
        var sittings = rehearsal.Sittings();
        var left = sittings
            .SelectMany(s => s.Portions)
            .Where(p => p.IsLiquid || p.Role is MealRole.Fruit or MealRole.SweetBite)
            .GroupBy(p => p.FoodId, p => p.Nutrients.CarbohydrateG)
            .OrderByDescending(food => food.Sum())
            .ThenBy(food => food.Key, StringComparer.Ordinal)
            .Select((food, place) => (food.Key, Place: place))
            .Where(food => trial.Left.Contains(food.Place))
            .Select(food => food.Key)
            .ToHashSet();
        return
        [
            .. sittings.Select(s => new EatenOccasion(
                s.Date,
                s.Kind,
                [
                    .. s.Portions.Select(p =>
                        left.Contains(p.FoodId) ? EatenPortion.Left(p.FoodId)
                        : s.Kind == OccasionKind.Supper && trial.Supper < 1
                            ? EatenPortion.Amount(p.FoodId, trial.Supper)
                        : EatenPortion.AsPlanned(p.FoodId)
                    ),
                ],
                []
            )),
        ];
    }

    private static Instant Evening(LocalDate runOn, int daysAfter) =>
        runOn.PlusDays(daysAfter).At(new LocalTime(18, 40)).InUtc().ToInstant();
}
