namespace Practice.Store.News;

/// <summary>That something changed in a practice: keys only, so that it may be told across the wall between practices.</summary>
/// <param name="PracticeId">The practice.</param>
/// <param name="What">What was done, as the audit says it; null when news may have been missed and all should be read again.</param>
/// <param name="About">Key of the client, race, plan or rehearsal it was done to.</param>
public sealed record NewsItem(Guid PracticeId, string? What, Guid? About)
{
    /// <summary>Whether it says nothing but that news may have been missed.</summary>
    public bool IsGap => What is null;
}
