using System.Collections.Immutable;
using Practice.Domain.Physiology;
using Practice.Domain.Races;

namespace Practice.Domain.Plans.Weeks;

/// <summary>
/// What a flag means for the plan. The flags are those of the road-race table of the American College of Sports
/// Medicine; what the tool does at each is its own rule.
/// </summary>
public static class HeatAdvice
{
    /// <summary>Heat to expect from a forecast.</summary>
    /// <param name="weather">The forecast as typed.</param>
    public static RaceHeat Of(ExpectedWeather weather)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var heat = WetBulbGlobe.Estimated(
            (double)weather.AirTemperatureC,
            (double)weather.RelativeHumidityPercent
        );
        // the flag is that of the figure shown, not of decimals nobody sees
        var shown = Math.Round((decimal)heat, 1);
        var colour = HeatColours.Of((double)shown);
        return new(
            weather.AirTemperatureC,
            weather.RelativeHumidityPercent,
            shown,
            colour,
            Actions(colour)
        );
    }

    private static ImmutableArray<string> Actions(HeatColour colour) =>
        colour switch
        {
            HeatColour.White =>
            [
                "Cold: dress in layers, keep hands warm enough to open a gel, and do not drink more than thirst asks.",
            ],
            HeatColour.Green => ["No change for heat. Drink to thirst."],
            HeatColour.Yellow =>
            [
                "Start slower than the goal pace, and let the goal go if it stays warm.",
            ],
            HeatColour.Red =>
            [
                "No fixed pace: run by effort, walk where needed, stop when unwell.",
                "Who is at risk in heat is advised not to start.",
                "Less caffeine than usual.",
            ],
            _ =>
            [
                "Too hot to race: the organiser may cancel; otherwise do not start.",
                "There is no race plan for such a day.",
            ],
        };
}
