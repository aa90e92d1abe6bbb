using NodaTime;

namespace Practice.Web.Parts.Plots;

/// <summary>How well a day does for a rehearsal.</summary>
public enum RaceLineDay
{
    Good,
    Warned,
    Blocked,
}

/// <summary>A rehearsal on the race line: from its first loading day to its run.</summary>
/// <param name="Id">Key of the rehearsal.</param>
/// <param name="Name">In the trade's words.</param>
/// <param name="Words">Where it stands, in words.</param>
/// <param name="State">The same as a class of the style sheet: booked, warned, told, pass, adapt, fail.</param>
/// <param name="FirstDay">First loading day.</param>
/// <param name="RunOn">Day of the run.</param>
/// <param name="CanMove">Whether it can still be moved.</param>
public sealed record RaceLineRehearsal(
    Guid Id,
    string Name,
    string Words,
    string State,
    LocalDate FirstDay,
    LocalDate RunOn,
    bool CanMove
);
