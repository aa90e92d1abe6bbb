namespace Practice.Domain.Evidence;

/// <content>Where the rules of the course come from: slope, feeding, drinking and caffeine during the race.</content>
public static partial class Sources
{
    /// <summary>Cost of running and walking against the slope.</summary>
    public static Source Minetti2002 { get; } =
        Published("minetti-2002", "Minetti et al. 2002. J Appl Physiol 93:1039-1046.");

    /// <summary>Carbohydrate during exercise by duration; 60 g/h of glucose alone, up to 90 g/h of mixed sugars.</summary>
    public static Source Jeukendrup2014 { get; } =
        Published("jeukendrup-2014", "Jeukendrup 2014. Sports Med 44(S1):S25-S33 (abstract).");

    /// <summary>90 g/h at 2:1 and 120 g/h at 1:0.8: what of it is burnt.</summary>
    public static Source Podlogar2022 { get; } =
        Published("podlogar-2022", "Podlogar et al. 2022. Eur J Appl Physiol (abstract).");

    /// <summary>Fructose to glucose of 0.7 to 1.0 is absorbed fastest at high rates.</summary>
    public static Source Rowlands2015 { get; } =
        Published("rowlands-2015", "Rowlands et al. 2015. Sports Med 45:1561-1576 (abstract).");

    /// <summary>Drinking before, during and after exercise; loss below about 2 %.</summary>
    public static Source Sawka2007 { get; } =
        Published(
            "sawka-2007",
            "American College of Sports Medicine, Sawka et al. 2007. Med Sci Sports Exerc 39:377-390."
        );

    /// <summary>Usual drinking in a marathon, for want of a sweat test.</summary>
    public static Source StartingRange { get; } =
        new(
            "drinking-start",
            "Starting range for a marathon, 0.4 to 0.8 L/h. Written from memory.",
            Provenance.FromMemory
        );

    /// <summary>3 to 6 mg/kg of caffeine, perhaps from 2 mg/kg.</summary>
    public static Source Guest2021 { get; } =
        Published(
            "guest-2021",
            "Guest et al. 2021. J Int Soc Sports Nutr 18:1, read in a summary."
        );

    /// <summary>Less than 3 mg/kg works as well as 3 to 6.</summary>
    public static Source Carvalho2022 { get; } =
        Published("carvalho-2022", "Carvalho et al. 2022. Sports Med (abstract).");

    /// <summary>Energy of cycling.</summary>
    public static Source CyclingWork { get; } =
        new(
            "cycling-work",
            "Mechanical work over gross efficiency, 0.20 to 0.25. Written from memory.",
            Provenance.FromMemory
        );

    /// <summary>Energy of walking on the level.</summary>
    public static Source WalkingEquation { get; } =
        Published(
            "acsm-walking",
            "ACSM walking equation, in Bushman 2020. ACSM Health Fit J 24(4):5-8; its horizontal term at 5 kcal/L."
        );

    /// <summary>Sodium of what is drunk.</summary>
    public static Source SodiumPerLitre { get; } =
        Habit("sodium-per-litre", "300 to 600 mg of sodium for each litre drunk.");

    /// <summary>Water with each gel.</summary>
    public static Source WaterWithGel { get; } =
        Habit("water-with-gel", "A cup or two of water with each gel.");

    /// <summary>Table of rates by duration and gut training.</summary>
    public static Source CourseRates { get; } =
        Own(
            "own-course-rates",
            "Under 2.5 h 45, 60, 75 g/h; to 3.5 h 45, 60, 75-90; above 40, 55, 60-75 for guts untrained, rehearsed, well trained (three clean trials); walking 30, 40, 50. At most what was tolerated in rehearsal and 10 g/h; above 90 g/h only by the practitioner's own decision."
        );

    /// <summary>Ceilings of the single sugars.</summary>
    public static Source SugarCeilings { get; } =
        Own(
            "own-sugar-ceilings",
            "Glucose above 60 g/h warns, above 67 blocks; fructose above 45 g/h warns, above 54 blocks; above 60 g/h in all at least 0.4 g of fructose for 1 g of glucose."
        );

    /// <summary>Strength over 40 minutes.</summary>
    public static Source StrengthOver40Minutes { get; } =
        Own(
            "own-strength-40-min",
            "Carbohydrate over fluid in any 40 min: above 10 % warns, above 14 % warns strongly."
        );

    /// <summary>Window of drinking.</summary>
    public static Source DrinkingWindowRule { get; } =
        Own(
            "own-drinking-window",
            "Aim at seven tenths of the sweat rate within loss of 2 % and sweat rate, at most 1 L/h. Without a test 0.4 to 0.8 L/h, at most 0.5 for those at risk of low sodium (above 4 h or below 60 kg)."
        );

    /// <summary>When to feed.</summary>
    public static Source FeedTimes { get; } =
        Own(
            "own-feed-times",
            "Every 20 min from minute 20, the last at least 15 min before the finish, none in the first 3 km."
        );

    /// <summary>Caffeine of a race.</summary>
    public static Source RaceCaffeine { get; } =
        Own(
            "own-race-caffeine",
            "Only if rehearsed: half before the start, half at 60 to 70 % of the race, 200 mg at once; 3 mg/kg in all from 23 °C of heat stress."
        );

    /// <summary>Descents and loads.</summary>
    public static Source EvenEffort { get; } =
        Own(
            "own-even-effort",
            "Constant metabolic power; descents save at most a fifth of the level's cost. A load carried counts as body mass."
        );

    /// <summary>What the heat of the day changes.</summary>
    public static Source HeatActions { get; } =
        Own(
            "own-heat-actions",
            "From 18 °C slower goals and a new look at the sweat test; from 23 °C at-risk clients do not start, no fixed pace, caffeine at most 3 mg/kg; above 28 °C no race plan. A sweat test more than 5 °C off is stale."
        );
}
