using System.Collections.Immutable;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Mail;

namespace Practice.Service.Mail;

/// <summary>What was sent to a client, and when.</summary>
public sealed class LettersToClient(LetterStore letters)
{
    /// <returns>Letters, the latest first.</returns>
    public Task<ImmutableArray<Letter>> Run(Desk desk, Guid clientId, CancellationToken cancel) =>
        letters.ToClient(desk.PracticeId, clientId, cancel);
}
