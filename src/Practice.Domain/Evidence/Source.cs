namespace Practice.Domain.Evidence;

/// <summary>How a figure came to be in the tool.</summary>
public enum Provenance
{
    /// <summary>Published, and read in the source or in a secondary account of it.</summary>
    Published,

    /// <summary>Written from general knowledge; to be checked before it is relied on.</summary>
    FromMemory,

    /// <summary>What practitioners do; no source is claimed.</summary>
    CommonPractice,

    /// <summary>A design choice of this tool: defensible, not published, and a setting.</summary>
    OwnRule,
}

/// <summary>Where a figure or a formula comes from.</summary>
/// <param name="Key">Short stable key, such as <c>thomas-2016</c>.</param>
/// <param name="Citation">Authors, year, journal and pages, and a DOI where known.</param>
/// <param name="Provenance">How far the citation was checked.</param>
public sealed record Source(string Key, string Citation, Provenance Provenance);
