namespace Practice.Service.Mail;

/// <summary>What became of sending.</summary>
public abstract record SendOutcome;

/// <summary>The letter is in the outbox.</summary>
/// <param name="To">Address it goes to.</param>
public sealed record Posted(string To) : SendOutcome;

/// <summary>The client has no address on file.</summary>
/// <param name="ClientId">Whose.</param>
public sealed record NoAddress(Guid ClientId) : SendOutcome;

/// <summary>The same was written of this rehearsal already.</summary>
public sealed record SaidBefore : SendOutcome;

/// <summary>There is nothing to send: the plan is not issued, the rehearsal not booked, nothing was told.</summary>
public sealed record NothingToSend : SendOutcome;
