using NodaTime;
using NodaTime.Text;
using Practice.Domain.Practices;

namespace Practice.Service.Mail;

/// <summary>What the letters say. Subjects name the practice and the errand, never a fact about health.</summary>
internal static class LetterTexts
{
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture(
        "d MMMM yyyy"
    );

    public static LetterContent Test(PracticeProfile practice) =>
        new(
            $"{practice.Name}: the mail server works",
            ["This letter was sent to try the mail server out. It arrived, so others will."],
            null,
            Foot(practice)
        );

    public static LetterContent Invitation(
        PracticeProfile practice,
        string by,
        StaffRole role,
        string address,
        LocalDate lastDay
    ) =>
        new(
            $"{practice.Name}: your seat in the team",
            [
                $"{by} offers you a seat in the team of {practice.Name}, as {Seat(role)}.",
                $"Open the link by {Day.Format(lastDay)}, choose a password, and you are in. The link works once. If you do not know what this is about, leave it be.",
            ],
            new LetterLink("Take the seat", address),
            Foot(practice)
        );

    public static LetterContent PasswordReset(
        PracticeProfile practice,
        string name,
        string address
    ) =>
        new(
            $"{practice.Name}: choose a new password",
            [
                $"{name}, somebody asked for a new password at {practice.Name}, probably you.",
                "The link works once and for two hours. If it was not you, leave it be: your password stays as it is.",
            ],
            new LetterLink("Choose a new password", address),
            Foot(practice)
        );

    public static LetterContent Handout(
        PracticeProfile practice,
        string clientName,
        string raceName,
        string by,
        Enclosure paper
    ) =>
        new(
            $"{practice.Name}: your plan for {raceName}",
            [
                $"{clientName}, your plan for {raceName} is enclosed as a paper to print or to keep on the phone.",
                "Read it through once before the first day. If anything in it cannot be eaten, got or understood, write back and we change it.",
                by,
            ],
            null,
            Foot(practice)
        )
        {
            Enclosures = [paper],
        };

    private static string Seat(StaffRole role) =>
        role switch
        {
            StaffRole.Owner => "an owner",
            StaffRole.Practitioner => "a practitioner",
            _ => "an assistant",
        };

    private static string Foot(PracticeProfile practice) =>
        practice.Footer.Length > 0 ? practice.Footer : practice.Name;
}
