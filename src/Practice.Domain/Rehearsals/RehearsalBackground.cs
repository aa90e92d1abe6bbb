using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Rehearsals;

/// <summary>What is known of a client before any rehearsal: when long runs are, which days do not do, what the gut has told.</summary>
public sealed class RehearsalBackground
{
    private RehearsalBackground() { }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Whose it is.</summary>
    public Guid ClientId { get; private set; }

    /// <summary>Days of the week with a long run, Monday first. Sunday until told otherwise: own rule.</summary>
    public ImmutableArray<IsoDayOfWeek> LongRuns { get; private set; } = [IsoDayOfWeek.Sunday];

    /// <summary>Days that do not do, earliest first, one reason a day.</summary>
    public ImmutableArray<BlockedDay> Blocked { get; private set; } = [];

    /// <summary>What was told of foods before any trial.</summary>
    public GutHistory Gut { get; private set; } = GutHistory.Unknown;

    /// <summary>The background of a client of whom nothing was told.</summary>
    public static RehearsalBackground Of(Guid practiceId, Guid clientId) =>
        new() { PracticeId = practiceId, ClientId = clientId };

    /// <summary>Records the days with a long run.</summary>
    public void RunLongOn(IEnumerable<IsoDayOfWeek> days) =>
        LongRuns = [.. days.Where(d => d != IsoDayOfWeek.None).Distinct().Order()];

    /// <summary>Blocks days; a day blocked before gets the new reason.</summary>
    /// <param name="from">First day.</param>
    /// <param name="to">Last day.</param>
    /// <param name="by">Why.</param>
    /// <exception cref="ArgumentException">It ends before it begins, or takes more than three months.</exception>
    public void Block(LocalDate from, LocalDate to, BlockedBy by)
    {
        if (to < from || to > from.PlusMonths(3))
            throw new ArgumentException("That is no stretch of days.", nameof(to));
        var days = Enumerable
            .Range(0, Period.DaysBetween(from, to) + 1)
            .Select(i => new BlockedDay(from.PlusDays(i), by));
        Blocked = [.. Blocked.Where(b => !b.IsWithin(from, to)).Concat(days).OrderBy(b => b.On)];
    }

    /// <summary>Frees days.</summary>
    public void Free(LocalDate from, LocalDate to) =>
        Blocked = [.. Blocked.Where(b => !b.IsWithin(from, to))];

    /// <summary>Records what was told of foods.</summary>
    public void Remember(GutHistory gut)
    {
        ArgumentNullException.ThrowIfNull(gut);
        Gut = gut;
    }
}
