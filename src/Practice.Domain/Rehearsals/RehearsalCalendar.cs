using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>A rehearsal on a day, booked or thought of.</summary>
/// <param name="Kind">How much is tried.</param>
/// <param name="RunOn">Day of the run.</param>
/// <param name="EatingDays">Days of loading before it, 1 to 4.</param>
public sealed record RehearsalPlace(RehearsalKind Kind, LocalDate RunOn, int EatingDays)
{
    /// <summary>The usual length: two days (24 to 36 h) for a full rehearsal, one for a partial.</summary>
    public static RehearsalPlace On(RehearsalKind kind, LocalDate runOn) =>
        new(kind, runOn, kind == RehearsalKind.Full ? 2 : 1);

    /// <summary>The first day on which food of the plan is eaten.</summary>
    public LocalDate FirstDay => RunOn.PlusDays(-EatingDays);
}

/// <summary>A word on a place in the calendar.</summary>
/// <param name="Blocks">Whether nothing may be booked there; otherwise it is a warning.</param>
/// <param name="Text">In words.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record PlacementNote(bool Blocks, string Text, Source Source);

/// <summary>Rehearsals that the calendar has room for.</summary>
/// <param name="Places">One or two, earliest first; empty when there is no room.</param>
/// <param name="Words">Why these, or why none.</param>
public sealed record RehearsalProposal(ImmutableArray<RehearsalPlace> Places, string Words);

/// <summary>
/// Finds days for rehearsals and judges days that a person chose. Days count back from the race. Habit of the trade:
/// two to four weeks out, next to a long run, partial before full, a week between, none in the last ten days. Trade
/// facts X09 to X11.
/// </summary>
public sealed record RehearsalCalendar
{
    /// <summary>Nearest day of the rehearsal weeks, days before the race.</summary>
    public const int Nearest = 14;

    /// <summary>Farthest day of the rehearsal weeks, days before the race.</summary>
    public const int Farthest = 28;

    /// <summary>Nothing is tried in the last days before a race.</summary>
    public const int TooLate = 10;

    /// <summary>Earlier than this a full trial says little of race day.</summary>
    public const int TooEarly = 42;

    /// <summary>Days between two rehearsals.</summary>
    public const int Apart = 7;

    // a full trial that goes wrong is repeated a week later, which must still lie in the rehearsal weeks
    private const int FullAt = Nearest + Apart;
    private const int PartialAt = FullAt + Apart;

    /// <summary>Day of the race.</summary>
    public required LocalDate Race { get; init; }

    /// <summary>Today.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Days of the week on which the client runs long.</summary>
    public ImmutableArray<IsoDayOfWeek> LongRuns { get; init; } = [IsoDayOfWeek.Sunday];

    /// <summary>Days that do not do.</summary>
    public ImmutableArray<BlockedDay> Blocked { get; init; } = [];

    /// <summary>Rehearsals that stand, done or booked.</summary>
    public ImmutableArray<RehearsalPlace> Standing { get; init; } = [];

    /// <summary>Where the rules come from.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.RehearsalHabit, Sources.NotInABadWeek];

    /// <summary>Whole days from a day to the race.</summary>
    public int DaysBefore(LocalDate day) => Period.DaysBetween(day, Race);

    /// <summary>
    /// Proposes what is still to be rehearsed: a partial and a full one, or the one that is missing of them; nothing after
    /// a full one. Only long-run days without a single note are taken.
    /// </summary>
    public RehearsalProposal Propose()
    {
        if (Standing.Any(r => r.Kind == RehearsalKind.Full))
            return BesideAFull();
        var full = Free(RehearsalKind.Full).OrderBy(r => Off(r, FullAt)).ToList();
        if (full.Count == 0)
            return new([], NoRoom());
        if (Standing.Any())
            return new([full[0]], "A partial rehearsal stands; the full one follows it.");
        var pairs =
            from partial in Free(RehearsalKind.Partial)
            from whole in full
            where Period.DaysBetween(partial.RunOn, whole.RunOn) >= Apart
            orderby Off(partial, PartialAt) + Off(whole, FullAt)
            select (ImmutableArray<RehearsalPlace>)[partial, whole];
        return pairs.FirstOrDefault() is { IsDefault: false } both
            ? new(both, "A partial rehearsal first, the full one after it, each before a long run.")
            : new([full[0]], "There is room for one: the full rehearsal, before a long run.");
    }

    private RehearsalProposal BesideAFull()
    {
        if (Standing.All(r => r.RunOn < Today))
            return new([], "A full rehearsal was run.");
        var partial = Standing.Any(r => r.Kind == RehearsalKind.Partial)
            ? null
            : Free(RehearsalKind.Partial).OrderBy(r => Off(r, PartialAt)).FirstOrDefault();
        return partial is null
            ? new([], "A full rehearsal stands in the calendar.")
            : new(
                [partial],
                "The full rehearsal stands; there is room for a partial one before it."
            );
    }

    /// <summary>The earliest day for one more rehearsal that the fewest words speak against; null when none is left.</summary>
    /// <param name="kind">How much is tried.</param>
    /// <param name="notBefore">The earliest day of its run.</param>
    public RehearsalPlace? Next(RehearsalKind kind, LocalDate notBefore) =>
        Enumerable
            .Range(0, Math.Max(0, DaysBefore(notBefore) - TooLate + 1))
            .Select(days => RehearsalPlace.On(kind, notBefore.PlusDays(days)))
            .Select(place => (Place: place, Notes: Judge(place)))
            .Where(on => !on.Notes.Any(n => n.Blocks))
            .OrderBy(on => on.Notes.Length)
            .ThenBy(on => on.Place.RunOn)
            .FirstOrDefault()
            .Place;

    /// <summary>What speaks against a place; empty when nothing does.</summary>
    public ImmutableArray<PlacementNote> Judge(RehearsalPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return [.. Notes(place)];
    }

    /// <summary>What speaks against a place where a rehearsal is booked: that its days have begun does not.</summary>
    public ImmutableArray<PlacementNote> JudgeBooked(RehearsalPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return (this with { Today = LocalDate.Min(Today, place.FirstDay.PlusDays(-1)) }).Judge(
            place
        );
    }

    private IEnumerable<PlacementNote> Notes(RehearsalPlace place)
    {
        var days = DaysBefore(place.RunOn);
        var habit = Sources.RehearsalHabit;
        if (days <= 0)
            yield return new(true, "That is race day, or after it.", habit);
        if (place.FirstDay < Today)
            yield return new(true, "Its first loading day has passed.", habit);
        if (place.FirstDay == Today)
            yield return new(
                false,
                "Its first loading day is today: the food must be at hand.",
                habit
            );
        if (place.Kind == RehearsalKind.Full && days is > 0 and < TooLate)
            yield return new(true, "A full rehearsal is never in the last 10 days.", habit);
        if (place.Kind == RehearsalKind.Full && days > TooEarly)
            yield return new(true, "More than six weeks out is too early for a full one.", habit);
        if (place.Kind == RehearsalKind.Partial && days is > 0 and < TooLate)
            yield return new(false, "In the last 10 days nothing new is tried.", habit);
        if (days is >= TooLate and < Nearest)
            yield return new(false, "Nearer than two weeks leaves no time to repeat it.", habit);
        if (days > Latest(place.Kind) && (place.Kind == RehearsalKind.Partial || days <= TooEarly))
            yield return new(false, $"Farther out than {Weeks(Latest(place.Kind))}.", habit);
        foreach (var note in Neighbours(place).Concat(Blocks(place)))
            yield return note;
        if (!LongRuns.Contains(place.RunOn.DayOfWeek))
            yield return new(false, "There is no long run on that day.", habit);
    }

    private IEnumerable<PlacementNote> Neighbours(RehearsalPlace place)
    {
        foreach (var other in Standing)
        {
            var apart = Math.Abs(Period.DaysBetween(other.RunOn, place.RunOn));
            if (apart == 0)
                yield return new(true, "A rehearsal stands on that day.", Sources.RehearsalHabit);
            else if (apart < Apart)
                yield return new(
                    false,
                    "Less than a week from another rehearsal.",
                    Sources.RehearsalHabit
                );
        }
        if (
            place.Kind == RehearsalKind.Partial
            && Standing.Any(r => r.Kind == RehearsalKind.Full && r.RunOn < place.RunOn)
        )
            yield return new(false, "A partial after a full rehearsal.", Sources.RehearsalHabit);
    }

    // a week that is spoilt by several days is said once
    private IEnumerable<PlacementNote> Blocks(RehearsalPlace place) =>
        Blocked
            .Where(b => b.IsWithin(place.FirstDay, place.RunOn))
            .Select(b => new PlacementNote(
                true,
                $"One of its days is blocked by {b.InWords}.",
                Sources.NotInABadWeek
            ))
            .Concat(
                Blocked
                    .Where(b => b.Spoils(place.FirstDay, place.RunOn))
                    .Select(b => new PlacementNote(
                        false,
                        $"The same week as {b.InWords}.",
                        Sources.NotInABadWeek
                    ))
            )
            .Distinct();

    private IEnumerable<RehearsalPlace> Free(RehearsalKind kind) =>
        Enumerable
            .Range(Nearest, Latest(kind) - Nearest + 1)
            .Select(days => RehearsalPlace.On(kind, Race.PlusDays(-days)))
            .Where(place => Judge(place).IsEmpty);

    private int Off(RehearsalPlace place, int wanted) => Math.Abs(DaysBefore(place.RunOn) - wanted);

    // a first step may come earlier: four to six weeks out
    private static int Latest(RehearsalKind kind) =>
        kind == RehearsalKind.Full ? Farthest : TooEarly;

    private static string Weeks(int days) => days == Farthest ? "four weeks" : "six weeks";

    private string NoRoom() =>
        DaysBefore(Today) < Nearest
            ? "It is too late to rehearse: less than two weeks are left. Keep to foods the client knows."
            : "No long-run day two to four weeks out is free. Free one, or choose another day.";
}
