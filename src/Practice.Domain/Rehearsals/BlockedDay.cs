using NodaTime;

namespace Practice.Domain.Rehearsals;

/// <summary>Why a day is no day for a rehearsal.</summary>
public enum BlockedBy
{
    /// <summary>On the road: the planned food is not at hand.</summary>
    Travel,

    /// <summary>Ill.</summary>
    Illness,

    /// <summary>A hard race.</summary>
    HardRace,

    /// <summary>A very hot spell.</summary>
    Heat,

    /// <summary>Anything else in the way.</summary>
    Other,
}

/// <summary>A day on which a client can not rehearse.</summary>
/// <param name="On">The day.</param>
/// <param name="By">Why.</param>
public sealed record BlockedDay(LocalDate On, BlockedBy By)
{
    /// <summary>"The same week", read as three days to either side. Own reading of a habit of the trade.</summary>
    private const int SameWeek = 3;

    /// <summary>Whether it spoils the whole week and not only the day: sickness, a hard race, heat.</summary>
    public bool SpoilsTheWeek => By is BlockedBy.Illness or BlockedBy.HardRace or BlockedBy.Heat;

    /// <summary>Whether days from one to another, both included, take in the day itself.</summary>
    public bool IsWithin(LocalDate from, LocalDate to) => On >= from && On <= to;

    /// <summary>Whether the days fall into the week that it spoils.</summary>
    public bool Spoils(LocalDate from, LocalDate to) =>
        SpoilsTheWeek && IsWithin(from.PlusDays(-SameWeek), to.PlusDays(SameWeek));

    internal string InWords =>
        By switch
        {
            BlockedBy.Travel => "travel",
            BlockedBy.Illness => "illness",
            BlockedBy.HardRace => "a hard race",
            BlockedBy.Heat => "heat",
            _ => "another engagement",
        };
}
