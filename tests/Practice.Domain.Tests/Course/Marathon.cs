using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Course;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Course;

/// <summary>A valid marathon case; tests change one fact.</summary>
internal sealed record Marathon(CourseCase Case)
{
    public static Marathon In(double minutes) =>
        new(
            new CourseCase
            {
                BodyMass = BodyMass.OfKilograms(70),
                AgeYears = 35,
                Diet = Diet.Unrestricted,
                Adjustments = Adjustments.None,
                Gut = GutOf(GutTraining.Rehearsed),
                Discipline = Discipline.RoadRunning,
                Finish = Duration.FromMinutes(minutes),
                Sheet = new CourseSheet
                {
                    Profile = CourseProfile.Typed(42.195m),
                    Products = CourseProducts.ToBeginWith,
                    Choices = new CourseChoices { SweatLPerHour = 1.0m },
                }.WithStations(
                    Enumerable
                        .Range(1, 16)
                        .Select(i => new AidStation(i * 2.5m, [Product.WaterId, "drink"]))
                ),
            }
        );

    public CourseTargets Targets => CourseTargets.For(Case);

    public CoursePlan Plan => CourseReading.Of(Case);

    public Marathon With(Func<CourseChoices, CourseChoices> change) =>
        On(s => s with { Choices = change(s.Choices) });

    public Marathon On(Func<CourseSheet, CourseSheet> change) =>
        this with
        {
            Case = Case with { Sheet = change(Case.Sheet) },
        };

    public Marathon For(Func<CourseCase, CourseCase> change) => this with { Case = change(Case) };

    public Marathon Screened(Adjustments adjustments) =>
        For(c => c with { Adjustments = adjustments });

    /// <summary>With a gut of that training, after which a rate was tolerated or none was told.</summary>
    public Marathon WithGut(GutTraining gut, decimal? tolerated = null) =>
        For(c => c with { Gut = GutOf(gut) with { ToleratedGPerHour = tolerated } });

    /// <summary>With her own value for a target.</summary>
    public Marathon Overriding(string key, decimal value) =>
        With(c =>
            c with
            {
                Overrides = c.Overrides.With(
                    new(key, value, null, "R. Larkfield", Instant.MinValue, "Asked for.")
                ),
            }
        );

    private static GutRecord GutOf(GutTraining gut) =>
        new()
        {
            CleanTrials = gut switch
            {
                GutTraining.NotTrained => 0,
                GutTraining.Rehearsed => 1,
                _ => 3,
            },
        };

    public Marathon Take(string productId, decimal km) =>
        On(s => CourseEdits.Add(s, productId, km));
}
