using NodaTime;
using Practice.Domain.Practices;

namespace Practice.Service.Desks;

/// <summary>Who acts, and for which practice. Every task asks it before it does anything.</summary>
public sealed record Desk(Guid PracticeId, Guid AccountId, string Name, StaffRole Role)
{
    /// <summary>From where: network address and kind of browser; empty for the tool itself.</summary>
    public string From { get; init; } = "";

    /// <summary>Team, mail, brand and audit are the owner's.</summary>
    public bool MayRunPractice => Role is StaffRole.Owner;

    /// <summary>Issuing, withdrawing and lifting holds is a practitioner's decision, never an assistant's.</summary>
    public bool MayDecide => Role is StaffRole.Practitioner or StaffRole.Owner;

    /// <summary>The practice itself, where nobody of it acts: what is due by the calendar is done in its name.</summary>
    internal static Desk Of(PracticeProfile practice) =>
        new(practice.PracticeId, Guid.Empty, practice.Name, StaffRole.Assistant);

    internal AuditEntry Note(string what, Guid? about, Instant at, string detail = "") =>
        new()
        {
            PracticeId = PracticeId,
            AccountId = AccountId == Guid.Empty ? null : AccountId,
            By = Name,
            From = From,
            What = what,
            About = about,
            At = at,
            Detail = detail,
        };
}
