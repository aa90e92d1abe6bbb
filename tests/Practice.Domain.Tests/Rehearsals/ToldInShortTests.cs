using NodaTime;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class ToldInShortTests
{
    private static readonly Feedback Told = new()
    {
        ReceivedAt = default,
        BreakfastPart = 0.5m,
        FluidMl = 1000,
        MassBefore = BodyMass.OfKilograms(80),
        MassAfter = BodyMass.OfKilograms(78.4m),
        UrineColour = 3,
        SleepHours = 7.5m,
        Run = new RunFeedback
        {
            DistanceKm = 28,
            Time = Duration.FromMinutes(125),
            AtRaceEffort = Duration.FromMinutes(45),
            CarbohydrateG = 150,
            FluidMl = 700,
            CaffeineMg = 120,
            WetBulbGlobeC = 21.3m,
        },
    };

    [Fact]
    public void Everything_told_beside_meals_and_symptoms_is_said()
    {
        Assert.Equal("28 km in 2 h 05 min", ToldInShort.Run(Told)!.Replace('\u00A0', ' '));
        Assert.Equal(
            "72 g/h, 700 ml drunk on the run, 45 min at race effort, 120 mg caffeine, heat stress about 21 °C, 2 % of body "
                + "mass lost, 50 % of the race breakfast, 1000 ml beside the plan, 7.5 h of sleep, urine 3 of 8",
            Facts(Told)
        );
    }

    [Fact]
    public void What_was_not_told_is_not_said_nor_body_mass_where_nobody_is_weighed()
    {
        var nothing = new Feedback { ReceivedAt = default };

        Assert.Null(ToldInShort.Run(nothing));
        Assert.Equal("", Facts(nothing));
        Assert.DoesNotContain(
            ToldInShort.Facts(Told, massAllowed: false),
            fact => fact.Contains("mass", StringComparison.Ordinal)
        );
    }

    private static string Facts(Feedback feedback) =>
        string.Join(", ", ToldInShort.Facts(feedback, massAllowed: true)).Replace('\u00A0', ' ');
}
