using Practice.Domain.Practices;
using Practice.Service.Accounts;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Service.Mail;
using Practice.Store.Accounts;
using Practice.Store.Practices;

namespace Practice.Service.Team;

/// <summary>What became of inviting.</summary>
public abstract record InviteOutcome;

/// <summary>The seat is offered and the letter in the outbox.</summary>
/// <param name="Link">The link in the letter, to hand over another way where there is no mail; shown once.</param>
public sealed record Invited(string Link) : InviteOutcome;

/// <summary>Somebody of the team has this address.</summary>
/// <param name="Name">Who.</param>
public sealed record InTheTeamAlready(string Name) : InviteOutcome;

/// <summary>Offers a seat in the team by e-mail.</summary>
public sealed class InviteMember(
    InvitationStore invitations,
    PracticeStore practices,
    LetterDesk letters,
    PracticeSettings settings,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="email">Where to.</param>
    /// <param name="role">What the member will be allowed.</param>
    /// <param name="reached">The address under which the program was reached, for the link.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<InviteOutcome> Run(
        Desk desk,
        string email,
        StaffRole role,
        string reached,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var team = await practices.Team(desk.PracticeId, cancel);
        if (
            team.FirstOrDefault(m =>
                string.Equals(m.Email, email.Trim(), StringComparison.OrdinalIgnoreCase)
            ) is
            { } known
        )
            return new InTheTeamAlready(known.Name);
        var secret = Secret.New();
        var now = calendar.Now;
        var invitation = Invitation.Offer(
            desk.PracticeId,
            email,
            role,
            Secret.Hash(secret),
            desk.Name,
            now
        );
        var link = settings.Link(reached, $"join?seat={secret}");
        var text = LetterTexts.Invitation(
            await letters.Letterhead(desk, cancel),
            desk.Name,
            role,
            link,
            calendar.DayOf(invitation.ExpiresAt)
        );
        await invitations.Offer(
            invitation,
            letters.Write(desk, LetterKind.Invitation, invitation.Email, null, text),
            desk.Note("member-invited", invitation.Id, now, $"{invitation.Email}, {role}"),
            cancel
        );
        return new Invited(link);
    }
}
