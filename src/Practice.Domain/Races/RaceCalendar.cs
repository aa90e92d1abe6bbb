using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Races;

/// <summary>The days before a race that mean something in fuelling, all in the race's own clock.</summary>
/// <param name="Start">Start of the race.</param>
public sealed record RaceCalendar(LocalDateTime Start)
{
    /// <summary>Where the rehearsal weeks and the race morning come from.</summary>
    public static Source Source { get; } =
        new(
            "race-calendar",
            "A full loading trial two to four weeks out, a last substantial meal one to four hours before the start: "
                + "habit of practitioners.",
            Provenance.CommonPractice
        );

    /// <summary>First day of the weeks in which a full loading is rehearsed: four weeks out.</summary>
    public LocalDate RehearseFrom => Start.Date.PlusWeeks(-4);

    /// <summary>Last day of those weeks: two weeks out.</summary>
    public LocalDate RehearseTo => Start.Date.PlusWeeks(-2);

    /// <summary>From here on foods are soft and low in fibre: two days before.</summary>
    public LocalDate LowResidueFrom => Start.Date.PlusDays(-2);

    /// <summary>Earliest hour of the race breakfast: four hours before the start.</summary>
    public LocalDateTime RaceMorningFrom => Start.PlusHours(-4);

    /// <summary>
    /// Where a loading window of some hours begins, its race breakfast counted in. A plan with meals says it better.
    /// </summary>
    /// <param name="windowHours">Length of the window, h.</param>
    public LocalDateTime LoadingFrom(int windowHours) => Start.PlusHours(-windowHours);
}
