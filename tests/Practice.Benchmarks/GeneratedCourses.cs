using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Course;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;

namespace Practice.Benchmarks;

/// <summary>Invented marathons of 3 to 5 h: bodies, guts, sweat, stations and pockets drawn at random, always the same for a number.</summary>
internal static class GeneratedCourses
{
    private const decimal Km = 42.195m;

    public static CourseCase Of(int number)
    {
        var random = new Random(number * 31 + 7);
        var every = random.Next(2) == 0 ? 5m : 2.5m;
        var gut = (GutTraining)random.Next(3);
        var carry = 5 + random.Next(5);
        var stations = Enumerable
            .Range(1, (int)(Km / every))
            .Select(i => new AidStation(
                i * every,
                i % 2 == 0 || random.Next(2) == 0 ? [Product.WaterId, "drink"] : [Product.WaterId],
                random.Next(2) == 0 ? 150 : 125
            ))
            .Where(s => s.Km < Km);
        var tolerated = gut == GutTraining.NotTrained ? null : (decimal?)(50 + 10 * random.Next(5));
        var sheet = new CourseSheet
        {
            Profile = CourseProfile.Typed(Km),
            Products =
            [
                .. CourseProducts.ToBeginWith.Select(p =>
                    p.IsCarried ? p with { CarryLimit = carry } : p
                ),
            ],
            Choices = new CourseChoices
            {
                SweatLPerHour = random.Next(3) == 0 ? null : 0.5m + 0.1m * random.Next(10),
                CaffeineMgPerKg = random.Next(2) * 2,
            },
        };
        return new CourseCase
        {
            BodyMass = BodyMass.OfKilograms(45 + random.Next(56)),
            AgeYears = 35,
            Diet = Diet.Unrestricted,
            Adjustments = Adjustments.None,
            Gut = new GutRecord { CleanTrials = CleanTrialsOf(gut), ToleratedGPerHour = tolerated },
            Discipline = Discipline.RoadRunning,
            Finish = Duration.FromMinutes(180 + random.Next(121)),
            Sheet = sheet.WithStations(stations),
        };
    }

    private static int CleanTrialsOf(GutTraining gut) =>
        gut switch
        {
            GutTraining.NotTrained => 0,
            GutTraining.Rehearsed => 1,
            _ => 3,
        };
}
