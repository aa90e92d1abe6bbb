using Practice.Domain.Quantities;

namespace Practice.Domain.Practices;

/// <summary>
/// A practice's own words on its papers and in its letters. What a letter is about, its dates and its button are written
/// around them, so that no choice of words can send a client to the wrong day. An empty text means the house's words.
/// </summary>
public sealed record StandardTexts
{
    /// <summary>The most characters of one text.</summary>
    public const int Most = 1500;

    /// <summary>Words that a practice begins with.</summary>
    public static StandardTexts House { get; } =
        new()
        {
            Handout =
                "Read it through once before the first day. If anything in it cannot be eaten, got or understood, write "
                + "back and we change it.",
            PhoneLink =
                "On a phone the pages show your plan day by day, and there you tell how a rehearsal went. They need no "
                + "account, and once opened they work without signal.",
            Reminder =
                "Have the foods at home, and eat them as they stand in the plan. Tell us afterwards how "
                + "it went, while it is fresh. If the day no longer suits you, write back.",
            Thanks =
                "Thank you. We read it and come back to you with what changes in your plan, if anything does.",
        };

    /// <summary>Under every plan on paper, as it stands on the day of printing; the house closes with nothing.</summary>
    public string Closing { get; init; } = "";

    /// <summary>With a plan as a paper.</summary>
    public string Handout { get; init; } = "";

    /// <summary>With the private link to the phone pages.</summary>
    public string PhoneLink { get; init; } = "";

    /// <summary>Before a rehearsal.</summary>
    public string Reminder { get; init; } = "";

    /// <summary>After feedback came in.</summary>
    public string Thanks { get; init; } = "";

    /// <summary>The texts as they are written: the practice's own, else the house's.</summary>
    public StandardTexts Filled() =>
        new()
        {
            Closing = Closing,
            Handout = Own(Handout, House.Handout),
            PhoneLink = Own(PhoneLink, House.PhoneLink),
            Reminder = Own(Reminder, House.Reminder),
            Thanks = Own(Thanks, House.Thanks),
        };

    /// <summary>The same, when it can be kept; the house's own words are kept as none, so that they may improve.</summary>
    /// <exception cref="ArgumentException">A text is too long or holds what no paper prints; the message says which.</exception>
    public StandardTexts Checked() =>
        new()
        {
            Closing = Kept(Closing, House.Closing, "The closing of papers"),
            Handout = Kept(Handout, House.Handout, "The text with a plan"),
            PhoneLink = Kept(PhoneLink, House.PhoneLink, "The text with a phone link"),
            Reminder = Kept(Reminder, House.Reminder, "The text before a rehearsal"),
            Thanks = Kept(Thanks, House.Thanks, "The text after feedback"),
        };

    private static string Own(string words, string house) => words.Length > 0 ? words : house;

    private static string Kept(string words, string house, string what)
    {
        var text = TypedText.Checked(words, Most, what, ofLines: true);
        return text == house ? "" : text;
    }
}
