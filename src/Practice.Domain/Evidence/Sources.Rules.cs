namespace Practice.Domain.Evidence;

/// <content>What is not published: habits of the trade, and the tool's own rules.</content>
public static partial class Sources
{
    /// <summary>10 g/kg a day is the working target.</summary>
    public static Source TenPerKilogram { get; } =
        Habit("ten-per-kg", "Working target of the trade: 10 g/kg of body mass in 24 h.");

    /// <summary>Length of the loading window.</summary>
    public static Source WindowLength { get; } =
        Habit(
            "window-length",
            "24 h can be enough; 36 to 48 h give leeway; no depletion beforehand."
        );

    /// <summary>Breakfast before the start.</summary>
    public static Source RaceBreakfast { get; } =
        Habit(
            "race-breakfast",
            "1 g/kg for each hour before the start, 1 to 4; breakfast 3 h before."
        );

    /// <summary>A tenth more or less counts as met.</summary>
    public static Source WithinATenth { get; } =
        Habit("within-a-tenth", "Nine tenths of the carbohydrate or more count as met.");

    /// <summary>Low-fibre food in the last days.</summary>
    public static Source LowFibre { get; } =
        Habit("low-fibre", "10 to 15 g of fibre in each of the last two days, from a usual 30 g.");

    /// <summary>How much of the carbohydrate is drunk.</summary>
    public static Source DrinksSupply { get; } =
        Habit("drinks-supply", "Drinks supply 25 to 35 % of the carbohydrate on loading days.");

    /// <summary>A little more to drink.</summary>
    public static Source DrinkALittleMore { get; } =
        Habit(
            "drink-a-little-more",
            "A little more drink and a little extra salt than usual on loading days."
        );

    /// <summary>Protein while loading.</summary>
    public static Source ProteinWhileLoading { get; } =
        Habit("protein-while-loading", "1.0 to 1.2 g/kg of protein on loading days.");

    /// <summary>Two to three percent.</summary>
    public static Source TwoToThreePercent { get; } =
        Habit("two-to-three-percent", "Figure of the trade: 2 to 3 % faster over a set distance.");

    /// <summary>More drink, in litres.</summary>
    public static Source FluidRule { get; } =
        Own("own-fluid", "0.3 to 0.6 L above usual on a loading day, never forced.");

    /// <summary>Fat while loading.</summary>
    public static Source FatRule { get; } =
        Own("own-fat", "Fat at most 1 g/kg and 25 % of energy, at least 20 g.");

    /// <summary>Protein ceiling while loading.</summary>
    public static Source ProteinRule { get; } =
        Own("own-protein", "Up to 1.4 g/kg leaves room for the protein of bread and pasta.");

    /// <summary>Fructose of a sitting.</summary>
    public static Source FructoseRule { get; } =
        Own("own-fructose", "Free fructose and half of the sucrose: at most 50 g in one sitting.");

    /// <summary>Fibre on earlier days.</summary>
    public static Source FibreShift { get; } =
        Own("own-fibre-shift", "Loading days before the last two may hold 5 g of fibre more.");

    /// <summary>Sodium of a day of normal salting.</summary>
    public static Source SaltingRule { get; } =
        Own("own-salting", "Normal salting taken as 2 to 5 g of sodium a day.");

    /// <summary>High body fat: scale by fat-free mass.</summary>
    public static Source BodyFatRule { get; } =
        Own(
            "own-body-fat",
            "Above 25 % (men) or 35 % (women) body fat, or BMI above 30: 12 g/kg of fat-free mass, never below 7 g/kg of body mass."
        );

    /// <summary>Middle of the range that screening allows.</summary>
    public static Source ScreenedRange { get; } =
        Own(
            "own-screened-range",
            "Where screening sets a range, start at its middle and never above it."
        );

    /// <summary>Below seven it is topping up.</summary>
    public static Source ToppingUp { get; } =
        Own(
            "own-topping-up",
            "Below 7 g/kg, or before an event under 90 min, it is topping up and not loading."
        );

    /// <summary>Glycogen approaches a plateau.</summary>
    public static Source LoadingKinetics { get; } =
        Own(
            "own-loading-kinetics",
            "First-order approach to a plateau, fitted to Bussau 2002; good to about 20 mmol/kg."
        );

    /// <summary>Plateau against dose.</summary>
    public static Source DoseDependence { get; } =
        Own(
            "own-dose",
            "Plateau rises in a straight line from 5 to 10 g/kg a day and stays there."
        );

    /// <summary>Storage limited by intake.</summary>
    public static Source MassBalance { get; } =
        Own(
            "own-mass-balance",
            "At most 0.75 of the carbohydrate eaten is stored (observed: 0.72)."
        );

    /// <summary>Total energy from resting energy.</summary>
    public static Source EnergyNeed { get; } =
        Own("own-energy-need", "Resting energy x 1.4 (1.3-1.6) and the net energy of training.");

    /// <summary>When energy must rise.</summary>
    public static Source EnergyCheck { get; } =
        Own(
            "own-energy-check",
            "Where carbohydrate brings more than 85 % of the usual need, energy must rise that day."
        );

    /// <summary>Speed assumed for want of anything better.</summary>
    public static Source AssumedSpeed { get; } =
        Own(
            "own-assumed-speed",
            "Without goal and recent result, a usual speed of the discipline decides whether to load."
        );

    private static Source Habit(string key, string text) =>
        new(key, text, Provenance.CommonPractice);

    private static Source Own(string key, string text) => new(key, text, Provenance.OwnRule);
}
