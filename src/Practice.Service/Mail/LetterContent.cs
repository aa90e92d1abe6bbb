using System.Collections.Immutable;
using Practice.Domain.Practices;

namespace Practice.Service.Mail;

/// <summary>A file that goes with a letter.</summary>
/// <param name="FileName">Its name.</param>
/// <param name="MediaType">Its kind, such as <c>application/pdf</c>.</param>
/// <param name="Content">The file.</param>
public sealed record Enclosure(string FileName, string MediaType, byte[] Content);

/// <summary>Where a letter leads.</summary>
/// <param name="Words">What happens there.</param>
/// <param name="Address">Full address.</param>
public sealed record LetterLink(string Words, string Address);

/// <summary>What a letter says, before it has a form.</summary>
/// <param name="Subject">Subject line; never a health fact, since others see it on a locked screen.</param>
/// <param name="Paragraphs">What it says.</param>
/// <param name="Link">Where it leads; null for nowhere.</param>
/// <param name="Foot">Who writes: the practice's own foot.</param>
public sealed record LetterContent(
    string Subject,
    ImmutableArray<string> Paragraphs,
    LetterLink? Link,
    string Foot
)
{
    /// <summary>The practice's name over the letter; empty for none.</summary>
    public string Head { get; init; } = "";

    /// <summary>Who signs it; empty where nobody does.</summary>
    public string By { get; init; } = "";

    /// <summary>Colour of its button, <c>#RRGGBB</c>.</summary>
    public string Accent { get; init; } = PracticeProfile.DefaultAccent;

    /// <summary>Files that go with it.</summary>
    public ImmutableArray<Enclosure> Enclosures { get; init; } = [];
}
