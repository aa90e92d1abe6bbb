namespace Practice.Store.Cluster;

/// <summary>What a private cluster is started with.</summary>
internal sealed record PrivateClusterOptions
{
    /// <summary>Folder of its own; made when missing.</summary>
    public required string Folder { get; init; }

    /// <summary>Name of the database.</summary>
    public string Database { get; init; } = "practice";

    /// <summary>False for tests: nothing is forced to disk, a power cut may lose all.</summary>
    public bool Durable { get; init; } = true;

    /// <summary>True for tests: the folder goes when the last user stops.</summary>
    public bool DeleteOnStop { get; init; }

    /// <summary>How long the server may take to start, recovery after a crash included.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(60);
}
