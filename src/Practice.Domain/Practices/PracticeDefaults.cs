using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;

namespace Practice.Domain.Practices;

/// <summary>What a practice begins its plans with, what it writes, and how long it keeps what is quiet.</summary>
public sealed record PracticeDefaults
{
    /// <summary>The most characters of the standard note.</summary>
    public const int MostNote = 2000;

    /// <summary>The most meal ideas.</summary>
    public const int MostIdeas = 40;

    /// <summary>The most characters of a meal idea.</summary>
    public const int MostIdea = 200;

    /// <summary>Carbohydrate per 24 h, g/kg, 3 to 14; null for the guideline's own.</summary>
    public decimal? CarbohydrateGPerKg { get; init; }

    /// <summary>Length of the loading window, h: 24 to 96.</summary>
    public int WindowHours { get; init; } = 36;

    /// <summary>Sittings on a full day, 5 to 7.</summary>
    public int OccasionsPerDay { get; init; } = 6;

    /// <summary>How a full day is spread over its sittings; empty for the house's spread.</summary>
    public ImmutableArray<Sitting> Sittings { get; init; } = [];

    /// <summary>Share of the carbohydrate that is drunk, 0 to 0.5.</summary>
    public decimal DrinksShare { get; init; } = 0.30m;

    /// <summary>The note a new plan begins with; empty for none.</summary>
    public string Note { get; init; } = "";

    /// <summary>Meals that are put into notes by a choice, each a line.</summary>
    public ImmutableArray<string> MealIdeas { get; init; } = [];

    /// <summary>Which worst score of a rehearsal passes and which fails.</summary>
    public SymptomThresholds Thresholds { get; init; } = SymptomThresholds.House;

    /// <summary>Days before its first meal at which a rehearsal is reminded of, 1 to 14; 0 for by hand only.</summary>
    public int ReminderDays { get; init; } = 3;

    /// <summary>Whether feedback from the phone is thanked for at once.</summary>
    public bool ThanksAtOnce { get; init; }

    /// <summary>The practice's words in letters.</summary>
    public StandardTexts Texts { get; init; } = new();

    /// <summary>Years after which a client without race or weighing is erased, 1 to 30; null for never.</summary>
    public int? KeptYears { get; init; }

    /// <summary>The same, when it makes sense.</summary>
    /// <exception cref="ArgumentException">A value is outside its range; the message says which.</exception>
    public PracticeDefaults Checked()
    {
        Unless(CarbohydrateGPerKg is null or (>= 3 and <= 14), "Carbohydrate: 3 to 14 g/kg.");
        Unless(WindowHours is >= 24 and <= 96, "The loading window: 24 to 96 h.");
        Unless(OccasionsPerDay is >= 5 and <= 7, "Occasions: 5 to 7 a day.");
        Unless(DrinksShare is >= 0 and <= 0.5m, "The drunk share: 0 to 50 %.");
        Unless(ReminderDays is >= 0 and <= 14, "Days before a rehearsal: 0 to 14.");
        Unless(KeptYears is null or (>= 1 and <= 30), "Years to keep: 1 to 30.");
        Unless(MealIdeas.Length <= MostIdeas, $"Meal ideas: at most {MostIdeas}.");
        return this with
        {
            MealIdeas =
            [
                .. MealIdeas
                    .Select(idea => TypedText.Checked(idea, MostIdea, "A meal idea"))
                    .Where(idea => idea.Length > 0)
                    .Distinct(),
            ],
            Note = TypedText.Checked(Note, MostNote, "The note", ofLines: true),
            Sittings = DaySpread.Checked(Sittings, OccasionsPerDay),
            Texts = Texts.Checked(),
            Thresholds = Thresholds.Checked(),
        };
    }

    private static void Unless(bool holds, string message)
    {
        if (!holds)
            throw new ArgumentException(message);
    }
}
