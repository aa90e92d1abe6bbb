using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Foods;
using Practice.Domain.Targets;

namespace Practice.Store.Tests;

/// <summary>A course plan with nothing at its default. Invented.</summary>
internal static class SampleCourse
{
    public static CoursePlan Of(Func<string, Target> target)
    {
        var totals = new CourseTotals(25, 13, 12, 150, 40, 50, 40);
        return new CoursePlan
        {
            Discipline = Domain.Races.Discipline.TrailRunning,
            Finish = Duration.FromMinutes(215),
            Pacing = Pacing.EvenEffort,
            Profile = new CourseProfile
            {
                DistanceKm = 42.2m,
                Points = [new CoursePoint(0, 12), new CoursePoint(42.2m, 40)],
                AscentM = 310,
                DescentM = 282,
                Origin = ProfileOrigin.Gpx,
                Name = "Quay to hill",
                Remarks = ["Heights were smoothed."],
            },
            Stations = [new AidStation(5, ["water", "sample-gel"], 180, "Mill")],
            Products = [Gel],
            Splits = [new CourseSplit(5, Duration.FromMinutes(25), Duration.FromMinutes(26))],
            Steps =
            [
                new CourseStep
                {
                    Id = 1,
                    Km = 5,
                    Elapsed = Duration.FromMinutes(26),
                    ProductId = Gel.Id,
                    Name = Gel.Name,
                    Count = 1,
                    Words = "a gel",
                    Station = "Mill",
                    FoodG = 40,
                    Ml = 150,
                    CarbohydrateG = 25,
                    GlucoseG = 13,
                    FructoseG = 12,
                    SodiumMg = 40,
                    CaffeineMg = 50,
                    Locked = true,
                },
            ],
            Hours = [new CourseHour(1, Duration.Zero, Duration.FromHours(1), totals)],
            Total = totals,
            Targets = new CourseTargets
            {
                Carbohydrate = target("course-carbohydrate"),
                Glucose = target("course-glucose"),
                Fructose = target("course-fructose"),
                DrinkStrength = target("course-strength"),
                Fluid = target("course-fluid"),
                Sodium = target("course-sodium"),
                Caffeine = target("course-caffeine"),
                Energy = target("course-energy"),
            },
            Warnings =
            [
                new CourseWarning(
                    CourseRule.Interval,
                    WarningWeight.Watch,
                    "Nothing for an hour.",
                    Duration.FromMinutes(80)
                ),
            ],
            Advice = ["Sip with the gel."],
        };
    }

    private static Product Gel { get; } =
        new()
        {
            Id = "sample-gel",
            Name = "Gel",
            Kind = ProductKind.Gel,
            ServingG = 40,
            ServingMl = 33,
            CarbohydrateG = 25,
            GlucoseG = 13,
            FructoseG = 12,
            SodiumMg = 40,
            CaffeineMg = 50,
            WaterNeedMl = 150,
            CarryLimit = 4,
            RefillsAtStations = true,
            Allergens = [Allergen.Soya],
            Traits = FoodTraits.SportsProduct,
            HasSucrose = true,
        };
}
