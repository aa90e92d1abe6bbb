using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Practice.Service.Desks;
using Practice.Store.News;

namespace Practice.Service.News;

/// <summary>Something that was done in the practice.</summary>
/// <param name="What">What, as the audit says it; null when news may have been missed and all should be read again.</param>
/// <param name="About">Key of the client, race, plan or rehearsal it was done to.</param>
public sealed record Happening(string? What, Guid? About)
{
    /// <summary>Whether it changed something: looking into a record and printing one do not.</summary>
    public bool Changes =>
        What is not ("record-read" or "audit-exported" or "signed-in")
        && What?.EndsWith("-printed", StringComparison.Ordinal) != true;

    /// <summary>Whether it may concern a thing: it is about it, or news may have been missed.</summary>
    public bool Concerns(Guid id) => What is null || About == id;
}

/// <summary>Tells open pages what anybody does in the practice, on whichever server.</summary>
public sealed class LiveNews(PracticeNews news)
{
    /// <summary>All that happened since the reader last asked, as often as something does, until cancelled.</summary>
    public async IAsyncEnumerable<ImmutableArray<Happening>> Of(
        Desk desk,
        [EnumeratorCancellation] CancellationToken cancel
    )
    {
        await foreach (var items in news.Of(desk.PracticeId, cancel))
            yield return [.. items.Select(i => new Happening(i.What, i.About))];
    }
}
