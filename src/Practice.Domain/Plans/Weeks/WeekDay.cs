using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Plans.Weeks;

/// <summary>What a day of the race week is for.</summary>
public enum WeekDayKind
{
    /// <summary>Eat as usual.</summary>
    Ordinary,

    /// <summary>Eat as usual, soft and low in fibre.</summary>
    LowFibre,

    /// <summary>A loading day: the plan has its plates.</summary>
    Loading,

    /// <summary>The last day before the race.</summary>
    Eve,

    /// <summary>The race.</summary>
    RaceDay,

    /// <summary>The day after.</summary>
    After,
}

/// <summary>Hours on the road or in the air, in the race's clock.</summary>
/// <param name="From">Leaves.</param>
/// <param name="To">Arrives, later on the same day.</param>
public sealed record Travel(LocalTime From, LocalTime To);

/// <summary>A day of the race week, seven days before to the day after.</summary>
public sealed record WeekDay
{
    /// <summary>The date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>Days before the race; 0 on the day, -1 after it.</summary>
    public required int DaysBefore { get; init; }

    /// <summary>What it is for.</summary>
    public required WeekDayKind Kind { get; init; }

    /// <summary>What to do, most important first.</summary>
    public ImmutableArray<Advice> Pointers { get; init; } = [];

    /// <summary>The practitioner's own words for the day.</summary>
    public string Note { get; init; } = "";

    /// <summary>When the client travels; null at home.</summary>
    public Travel? Travel { get; init; }

    /// <summary>Days compare by content.</summary>
    public bool Equals(WeekDay? other) =>
        other is not null
        && Date == other.Date
        && DaysBefore == other.DaysBefore
        && Kind == other.Kind
        && Note == other.Note
        && Travel == other.Travel
        && Pointers.SequenceEqual(other.Pointers);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Date, Kind, Note, Travel);
}
