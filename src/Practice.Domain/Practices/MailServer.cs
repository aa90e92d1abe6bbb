using System.Collections.Immutable;

namespace Practice.Domain.Practices;

/// <summary>How a mail server wants to be spoken to.</summary>
public enum MailSecurity
{
    /// <summary>Begins open and turns to TLS before anything is said; usual on port 587.</summary>
    StartTls,

    /// <summary>TLS from the first byte; usual on port 465.</summary>
    Tls,

    /// <summary>In the open: only for a relay on the same machine or network.</summary>
    Open,
}

/// <summary>The mail server that a practice sends through.</summary>
public sealed record MailServer
{
    /// <summary>The practice.</summary>
    public required Guid PracticeId { get; init; }

    /// <summary>Name of the machine.</summary>
    public required string Host { get; init; }

    /// <summary>Port, 1 to 65535.</summary>
    public required int Port { get; init; }

    /// <summary>How it wants to be spoken to.</summary>
    public MailSecurity Security { get; init; }

    /// <summary>Name to sign in with; empty for a server that asks for none.</summary>
    public string User { get; init; } = "";

    /// <summary>The password, sealed; empty for none.</summary>
    public ImmutableArray<byte> SealedPassword { get; init; } = [];

    /// <summary>Address that letters come from.</summary>
    public required string From { get; init; }
}
