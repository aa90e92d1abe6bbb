using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>What a course plan is computed from, gathered and checked once.</summary>
public sealed record CourseCase
{
    /// <summary>Body mass.</summary>
    public required BodyMass BodyMass { get; init; }

    /// <summary>Age in whole years.</summary>
    public required int AgeYears { get; init; }

    /// <summary>What must not be eaten.</summary>
    public required Diet Diet { get; init; }

    /// <summary>What screening changed.</summary>
    public required Adjustments Adjustments { get; init; }

    /// <summary>What rehearsals tell of the gut.</summary>
    public GutRecord Gut { get; init; } = GutRecord.None;

    /// <summary>Kind of event.</summary>
    public required Discipline Discipline { get; init; }

    /// <summary>Time to the finish that is planned for.</summary>
    public required Duration Finish { get; init; }

    /// <summary>The sheet being worked on.</summary>
    public required CourseSheet Sheet { get; init; }

    /// <summary>What the practitioner decided.</summary>
    public CourseChoices Choices => Sheet.Choices;

    /// <summary>The course.</summary>
    public CourseProfile Profile => Sheet.Profile;

    /// <summary>Body mass, kg.</summary>
    public decimal MassKg => BodyMass.Kilograms;

    /// <summary>Duration, h.</summary>
    public decimal Hours => (decimal)Finish.TotalHours;

    /// <summary>Whether the client is 18 or older.</summary>
    public bool IsAdult => AgeYears >= 18;

    /// <summary>More than four hours, or below 60 kg: low blood sodium is likelier.</summary>
    public bool IsAtRiskOfLowSodium => Hours > 4 || MassKg < 60;

    /// <summary>Her own value for a target or a fact of the gut, beside what is computed now.</summary>
    public TargetOverride? OverrideOf(string key, decimal? computed) =>
        Choices.Overrides.Of(key, computed);

    /// <summary>When each place is passed.</summary>
    public PaceLine Pace => PaceLine.Of(this, Choices.Pacing);

    /// <summary>Gathers the case of a race.</summary>
    /// <param name="client">Who runs it.</param>
    /// <param name="race">The race.</param>
    /// <param name="adjustments">What screening changed.</param>
    /// <param name="expectedFinish">Expected finish, min, of the race's targets; used where no time was chosen.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="gut">What rehearsals tell of the gut.</param>
    /// <param name="today">The day on which it holds.</param>
    /// <exception cref="ArgumentException">The client was never weighed.</exception>
    public static CourseCase Of(
        Client client,
        Race race,
        Adjustments adjustments,
        Target expectedFinish,
        CourseSheet sheet,
        GutRecord gut,
        LocalDate today
    )
    {
        ArgumentNullException.ThrowIfNull(client);
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(expectedFinish);
        ArgumentNullException.ThrowIfNull(sheet);
        return new CourseCase
        {
            BodyMass =
                client.LatestMass?.Mass
                ?? throw new ArgumentException("A course plan needs a body mass.", nameof(client)),
            AgeYears = client.AgeOn(today),
            Diet = client.Diet,
            Adjustments = adjustments,
            Gut = gut,
            Discipline = race.Discipline,
            Finish = sheet.Choices.Finish ?? Expected(expectedFinish) ?? UsualTime.Of(race),
            Sheet = sheet,
        };
    }

    private static Duration? Expected(Target finish) =>
        finish.Aim is { } minutes ? Duration.FromMinutes((double)minutes) : null;
}
