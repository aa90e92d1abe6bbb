using NodaTime;
using Practice.Domain.Quantities;

namespace Practice.Domain.Clients;

/// <summary>How a client agreed.</summary>
public enum ConsentWay
{
    /// <summary>Signed on paper.</summary>
    OnPaper,

    /// <summary>Said so in the practice.</summary>
    Spoken,

    /// <summary>Wrote it, for example in an e-mail.</summary>
    Written,
}

/// <summary>That a client agreed to what is kept of her, by which text, and whether it still stands.</summary>
/// <param name="On">Day she agreed.</param>
/// <param name="TextVersion">Version of the text she agreed to.</param>
/// <param name="Way">How.</param>
/// <param name="RecordedBy">Name of the member who recorded it.</param>
public sealed record Consent(LocalDate On, int TextVersion, ConsentWay Way, string RecordedBy)
{
    /// <summary>Day it was taken back; null while it stands.</summary>
    public LocalDate? WithdrawnOn { get; init; }
}

/// <summary>
/// What clients are asked to agree to. A text that somebody agreed to is never changed: a new one gets the next number.
/// The words are our own and are no legal advice; a practice has them looked at under its own law.
/// </summary>
/// <param name="Version">1, 2, 3 ...</param>
/// <param name="Words">The text.</param>
public sealed record ConsentText(int Version, string Words)
{
    /// <summary>The text that is asked now.</summary>
    public static ConsentText Current { get; } =
        new(
            1,
            "I agree that this practice keeps my name, my body measurements, my answers about my health, what I eat and "
                + "do not eat, my races, plans and rehearsals, to plan my food before and in races. I may ask for a copy "
                + "of all of it, and I may take this agreement back at any time; then no more plans are made for me."
        );
}

/// <summary>Why a client's record must not be erased for now: a claim, an order, a duty to keep.</summary>
/// <param name="Reason">The reason, 1 to 500 characters; no health facts.</param>
/// <param name="Since">Day it was set.</param>
/// <param name="By">Name of who set it.</param>
public sealed record LegalHold(string Reason, LocalDate Since, string By)
{
    /// <summary>The most characters of a reason.</summary>
    public const int MostReason = 500;

    /// <summary>Sets a hold.</summary>
    /// <exception cref="ArgumentException">The reason is empty or cannot be kept.</exception>
    public static LegalHold For(string reason, LocalDate since, string by)
    {
        var words = TypedText.Checked(reason, MostReason, "The reason");
        return words.Length > 0
            ? new(words, since, by)
            : throw new ArgumentException("The reason: it is needed.");
    }
}
