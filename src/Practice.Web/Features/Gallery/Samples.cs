using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Web.Features.Gallery;

/// <summary>An invented client with real targets and real foods, for the gallery of parts and its tests.</summary>
internal static class Samples
{
    public static LocalDateTime Now { get; } = new(2026, 9, 1, 9, 0);

    public static Client Client { get; } = MakeClient();

    public static Race Race { get; } =
        Race.Enter(
            Guid.Empty,
            Client.Id,
            new RaceDetails
            {
                Name = "Harbour Marathon",
                Place = "Invented-on-Sea",
                DistanceKm = 42.195m,
                Start = new LocalDateTime(2026, 10, 4, 9, 30),
                ZoneId = "Europe/London",
                GoalTime = Duration.FromMinutes(220),
            }
        );

    public static ScreeningOutcome Screening { get; } = new([], [], Adjustments.None);

    public static LoadingTargets Targets { get; } =
        LoadingTargets.For(Client, Race, Screening, new LoadingChoices(), Now.Date);

    /// <summary>The eve of the race with a plate at each sitting, one of them short.</summary>
    public static ImmutableArray<PlanDay> Days { get; } = MakeDays();

    public static Hold Hold { get; } =
        new(
            "diabetes-insulin",
            "Diabetes treated with insulin",
            "A loading plan changes insulin needs. A written clearance of the diabetes team is needed, with doses for loading and race day.",
            new Source("common-practice", "Habit of practitioners", Provenance.CommonPractice)
        );

    public static ImmutableArray<Caution> Cautions { get; } =
    [
        new(
            "drink-to-thirst",
            "Drink to thirst. Never gain weight by drinking during the race.",
            ForClient: true,
            new Source("common-practice", "Habit of practitioners", Provenance.CommonPractice)
        ),
        new(
            "early-fullness",
            "Early fullness was reported: smaller plates, more of the carbohydrate as drinks.",
            ForClient: false,
            new Source("own", "A rule of this tool", Provenance.OwnRule)
        ),
    ];

    public static MenuConflict Conflict { get; } =
        new(
            [LimitKind.DayCarbohydrate, LimitKind.Fibre],
            Proven: true,
            "Saturday's carbohydrate and its fibre ceiling can't both be kept with the foods that are left.",
            [
                new(
                    LimitKind.Fibre,
                    Days[^1].Date,
                    12,
                    15,
                    13.4m,
                    "Raise the fibre ceiling to 15 g: at least 13.4 g is certain."
                ),
                new(
                    LimitKind.DayCarbohydrate,
                    Days[^1].Date,
                    680,
                    640,
                    null,
                    "Lower Saturday's carbohydrate to 640 g."
                ),
            ]
        );

    public static ImmutableArray<PortionChange> Changes { get; } =
    [
        new(
            OccasionKind.Breakfast,
            Portion("white-bread", MealRole.Bread, 3),
            Portion("white-bread", MealRole.Bread, 4)
        ),
        new(OccasionKind.Lunch, null, Portion("white-rice", MealRole.Rice, 5)),
        new(
            OccasionKind.Supper,
            Portion("bagel", MealRole.Bread, 2),
            Portion("crumpet", MealRole.Bread, 2)
        ),
    ];

    public static Portion Portion(string food, MealRole role, int steps) =>
        Domain.Plans.Portion.Of(FoodLibrary.Standard.Find(food)!, role, steps);

    private static Client MakeClient()
    {
        var client = Domain.Clients.Client.Register(
            Guid.Empty,
            "Maren",
            "Holt",
            new LocalDate(1989, 3, 14),
            new Physique
            {
                Sex = Sex.Female,
                HeightCm = 171,
                RecentResult = new RaceResult(21.1m, Duration.FromMinutes(101)),
                WeeklyKm = 62,
            },
            new BodyMassEntry(new LocalDate(2026, 6, 2), BodyMass.OfKilograms(64.8m))
        );
        decimal[] kilograms = [64.2m, 64.5m, 63.6m, 63.4m, 63.1m];
        foreach (var (week, kg) in kilograms.Index())
            client.Weigh(
                new(new LocalDate(2026, 6, 16).PlusWeeks(2 * week), BodyMass.OfKilograms(kg))
            );
        return client;
    }

    private static ImmutableArray<PlanDay> MakeDays()
    {
        var days = LoadingLayout.Days(
            Race.Start,
            Client.LatestMass!.Mass,
            new LoadingChoices(),
            Targets,
            Adjustments.None
        );
        return [.. days.Select(day => day with { Occasions = [.. day.Occasions.Select(Filled)] })];
    }

    private static Occasion Filled(Occasion occasion) =>
        occasion with
        {
            Portions = occasion.Kind switch
            {
                OccasionKind.Breakfast =>
                [
                    Portion("bagel", MealRole.Bread, 4),
                    Portion("strawberry-jam", MealRole.Spread, 3),
                    Portion("orange-juice", MealRole.Drink, 6) with
                    {
                        IsLocked = true,
                    },
                ],
                OccasionKind.MorningSnack =>
                [
                    Portion("rice-cakes", MealRole.Bread, 5),
                    Portion("honey", MealRole.Spread, 3),
                ],
                OccasionKind.Lunch or OccasionKind.EveningMeal =>
                [
                    Portion("white-rice", MealRole.Rice, 7),
                    Portion("carrots", MealRole.Vegetable, 1),
                ],
                OccasionKind.AfternoonSnack => [Portion("crumpet", MealRole.Bread, 3)],
                _ => [Portion("banana", MealRole.Fruit, 1)],
            },
        };
}
