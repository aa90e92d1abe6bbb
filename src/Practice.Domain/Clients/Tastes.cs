using System.Collections.Immutable;

namespace Practice.Domain.Clients;

/// <summary>
/// What a client likes, and what rehearsals taught: soft for liking, strong for suspicion. Food keys throughout.
/// </summary>
public sealed record Tastes
{
    /// <summary>Nothing known.</summary>
    public static Tastes Unknown { get; } = new();

    /// <summary>Foods the client likes.</summary>
    public ImmutableHashSet<string> Likes { get; init; } = [];

    /// <summary>Foods the client will not eat: left out of every plan.</summary>
    public ImmutableHashSet<string> Dislikes { get; init; } = [];

    /// <summary>Foods that sat well in a rehearsal.</summary>
    public ImmutableHashSet<string> Tolerated { get; init; } = [];

    /// <summary>Foods suspected of gut trouble.</summary>
    public ImmutableHashSet<string> Suspect { get; init; } = [];
}
