using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Service.Mail;

/// <summary>What the letters say. Subjects name the practice and the errand, never a fact about health.</summary>
internal static class LetterTexts
{
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture(
        "d MMMM yyyy"
    );

    private static readonly LocalDatePattern WeekDay = LocalDatePattern.CreateWithInvariantCulture(
        "dddd d MMMM"
    );

    public static LetterContent Test(PracticeProfile practice) =>
        From(
            practice,
            "the mail server works",
            ["This letter was sent to try the mail server out. It arrived, so others will."]
        );

    public static LetterContent Invitation(
        PracticeProfile practice,
        string by,
        StaffRole role,
        string address,
        LocalDate lastDay
    ) =>
        From(
            practice,
            "your seat in the team",
            [
                $"{by} offers you a seat in the team of {practice.Name}, as {Seat(role)}.",
                $"Open the link by {Day.Format(lastDay)}, choose a password, and you are in. The link works once. If you do not know what this is about, leave it be.",
            ],
            new LetterLink("Take the seat", address)
        );

    public static LetterContent PasswordReset(
        PracticeProfile practice,
        string name,
        string address
    ) =>
        From(
            practice,
            "choose a new password",
            [
                $"{name}, somebody asked for a new password at {practice.Name}, probably you.",
                "The link works once and for two hours. If it was not you, leave it be: your password stays as it is.",
            ],
            new LetterLink("Choose a new password", address)
        );

    public static LetterContent Handout(Addressee to, string by, Enclosure paper) =>
        From(
            to.Practice,
            $"your plan for {to.RaceName}",
            [
                $"{to.GivenName}, your plan for {to.RaceName} is enclosed as a paper to print or to keep on the phone.",
                .. to.Words(texts => texts.Handout),
            ],
            by: by
        ) with
        {
            Enclosures = [paper],
        };

    public static LetterContent PhoneLink(
        Addressee to,
        string by,
        string address,
        LocalDate lastDay
    ) =>
        From(
            to.Practice,
            $"your pages for {to.RaceName}",
            [
                $"{to.GivenName}, this is your private link to the pages for {to.RaceName}. It works until {Day.Format(lastDay)}.",
                .. to.Words(texts => texts.PhoneLink),
                "Keep it to yourself: whoever has the link can read your plan.",
            ],
            new LetterLink("Open my pages", address),
            by
        );

    /// <param name="to">Who is reminded.</param>
    /// <param name="by">Who writes.</param>
    /// <param name="rehearsal">Of what.</param>
    /// <param name="today">The day it is written.</param>
    /// <param name="address">Where it stands what to eat; null where the program does not know its own address.</param>
    public static LetterContent Reminder(
        Addressee to,
        string by,
        Rehearsal rehearsal,
        LocalDate today,
        string? address
    )
    {
        var runOn = rehearsal.RunOn;
        var firstMeal = rehearsal.Details.Part.FirstEatenOn(runOn);
        return From(
            to.Practice,
            $"your rehearsal on {WeekDay.Format(runOn)}",
            [
                firstMeal > today
                    ? $"{to.GivenName}, your rehearsal for {to.RaceName} is coming up. Its first meal is on {WeekDay.Format(firstMeal)}, and the run is on {WeekDay.Format(runOn)}."
                    : $"{to.GivenName}, your rehearsal for {to.RaceName} is under way: the run is on {WeekDay.Format(runOn)}.",
                .. to.Words(texts => texts.Reminder),
            ],
            address is null ? null : new LetterLink("See what to eat", address),
            by
        );
    }

    /// <summary>Nobody has read the answers when it is written: somebody unwell must not wait for that.</summary>
    public static LetterContent Thanks(Addressee to, string by, Rehearsal rehearsal) =>
        From(
            to.Practice,
            "what you told us has arrived",
            [
                $"{to.GivenName}, what you told us of your rehearsal on {WeekDay.Format(rehearsal.RunOn)} has arrived.",
                .. to.Words(texts => texts.Thanks),
                "If you feel unwell, do not wait for us: ask a doctor.",
            ],
            by: by
        );

    private static string Seat(StaffRole role) =>
        role switch
        {
            StaffRole.Owner => "an owner",
            StaffRole.Practitioner => "a practitioner",
            _ => "an assistant",
        };

    private static LetterContent From(
        PracticeProfile practice,
        string errand,
        ImmutableArray<string> paragraphs,
        LetterLink? link = null,
        string by = ""
    ) =>
        new(
            $"{practice.Name}: {errand}",
            paragraphs,
            link,
            practice.Footer.Length > 0 ? practice.Footer : practice.Name
        )
        {
            Head = practice.Name,
            Accent = practice.Accent,
            By = by,
        };
}
