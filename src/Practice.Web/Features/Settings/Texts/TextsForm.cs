using System.ComponentModel.DataAnnotations;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Web.Features.Settings.Defaults;
using Practice.Web.Parts;

namespace Practice.Web.Features.Settings.Texts;

/// <summary>What is typed about the words of papers and letters.</summary>
public sealed class TextsForm : IDefaultsForm<TextsForm>, IValidatableObject
{
    [Typed(PracticeDefaults.MostNote, OfLines = true)]
    public string? Opening { get; set; }

    [Typed(StandardTexts.Most, OfLines = true)]
    public string? Closing { get; set; }

    [Typed(StandardTexts.Most, OfLines = true)]
    public string? Handout { get; set; }

    [Typed(StandardTexts.Most, OfLines = true)]
    public string? PhoneLink { get; set; }

    [Typed(StandardTexts.Most, OfLines = true)]
    public string? Reminder { get; set; }

    [Typed(StandardTexts.Most, OfLines = true)]
    public string? Thanks { get; set; }

    [Range(1, 14, ErrorMessage = "Between 1 and 14 days.")]
    public int? ReminderDays { get; set; }

    public bool ThanksAtOnce { get; set; }

    /// <summary>Meal ideas, one a line.</summary>
    public string? MealIdeas { get; set; }

    public static TextsForm Open(PracticeDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(defaults);
        var texts = defaults.Texts.Filled();
        return new()
        {
            Opening = defaults.Note,
            Closing = texts.Closing,
            Handout = texts.Handout,
            PhoneLink = texts.PhoneLink,
            Reminder = texts.Reminder,
            Thanks = texts.Thanks,
            ReminderDays = defaults.ReminderDays == 0 ? null : defaults.ReminderDays,
            ThanksAtOnce = defaults.ThanksAtOnce,
            MealIdeas = string.Join('\n', defaults.MealIdeas),
        };
    }

    public PracticeDefaults ApplyTo(PracticeDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(defaults);
        return defaults with
        {
            Note = Opening ?? "",
            Texts = new StandardTexts
            {
                Closing = Closing ?? "",
                Handout = Handout ?? "",
                PhoneLink = PhoneLink ?? "",
                Reminder = Reminder ?? "",
                Thanks = Thanks ?? "",
            },
            ReminderDays = ReminderDays ?? 0,
            ThanksAtOnce = ThanksAtOnce,
            MealIdeas = [.. Ideas],
        };
    }

    /// <summary>The house's words in every letter.</summary>
    public void WriteAsUsual()
    {
        var house = StandardTexts.House;
        (Handout, PhoneLink, Reminder, Thanks) = (
            house.Handout,
            house.PhoneLink,
            house.Reminder,
            house.Thanks
        );
    }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Ideas.Length > PracticeDefaults.MostIdeas)
            yield return new(
                $"At most {PracticeDefaults.MostIdeas} ideas: there are {Ideas.Length}.",
                [nameof(MealIdeas)]
            );
        foreach (var idea in Ideas)
            if (TypedText.Problem(idea, PracticeDefaults.MostIdea) is { } problem)
                yield return new($"“{Beginning(idea)}”: {problem}", [nameof(MealIdeas)]);
    }

    private string[] Ideas =>
        (MealIdeas ?? "").Split(
            '\n',
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );

    private static string Beginning(string idea) => idea.Length > 30 ? idea[..30] + "…" : idea;
}
