using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Team;

/// <summary>Takes an offered seat back; its link leads nowhere from then on.</summary>
public sealed class WithdrawInvitation(InvitationStore invitations, PracticeCalendar calendar)
{
    /// <returns>Whether there was one that stood.</returns>
    public Task<bool> Run(Desk desk, Guid invitationId, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        return invitations.Withdraw(
            invitationId,
            desk.Note("invitation-withdrawn", invitationId, calendar.Now),
            cancel
        );
    }
}
