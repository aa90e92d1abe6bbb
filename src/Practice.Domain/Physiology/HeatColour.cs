namespace Practice.Domain.Physiology;

/// <summary>Colour of the flag that a road race flies in heat.</summary>
public enum HeatColour
{
    /// <summary>Below 10 °C: cold is the risk.</summary>
    White,

    /// <summary>10 to below 18 °C.</summary>
    Green,

    /// <summary>18 to below 23 °C.</summary>
    Yellow,

    /// <summary>23 to 28 °C.</summary>
    Red,

    /// <summary>Above 28 °C: cancel, or stay away.</summary>
    Black,
}

/// <summary>
/// The flag of a heat stress. Whole degrees are published; the bounds here close their gaps. Source: American College
/// of Sports Medicine, road-race table, secondary copy. Checks F20-F25.
/// </summary>
public static class HeatColours
{
    /// <summary>The flag.</summary>
    /// <param name="wetBulbGlobeC">Wet-bulb globe temperature, °C.</param>
    public static HeatColour Of(double wetBulbGlobeC) =>
        wetBulbGlobeC switch
        {
            < 10 => HeatColour.White,
            < 18 => HeatColour.Green,
            < 23 => HeatColour.Yellow,
            <= 28 => HeatColour.Red,
            _ => HeatColour.Black,
        };
}
