namespace Practice.Domain.Targets;

/// <summary>Stable keys of the targets: overrides, meters and stored plans name them.</summary>
public static class TargetKeys
{
    /// <summary>Carbohydrate rate.</summary>
    public const string CarbohydrateRate = "carbohydrate-rate";

    /// <summary>Carbohydrate of a full day.</summary>
    public const string CarbohydratePerDay = "carbohydrate-per-day";

    /// <summary>Carbohydrate of the window.</summary>
    public const string CarbohydrateTotal = "carbohydrate-total";

    /// <summary>Energy of a full day.</summary>
    public const string Energy = "energy";

    /// <summary>Protein of a full day.</summary>
    public const string Protein = "protein";

    /// <summary>Fat of a full day.</summary>
    public const string Fat = "fat";

    /// <summary>Fibre of a full day.</summary>
    public const string Fibre = "fibre";

    /// <summary>Share of the carbohydrate that is drunk.</summary>
    public const string DrinksShare = "drinks-share";

    /// <summary>Drinking above usual.</summary>
    public const string Fluid = "fluid";

    /// <summary>Sodium of a full day.</summary>
    public const string Sodium = "sodium";

    /// <summary>Fructose of one sitting.</summary>
    public const string FructosePerOccasion = "fructose-per-occasion";

    /// <summary>Expected gain of body mass.</summary>
    public const string BodyMassGain = "body-mass-gain";

    /// <summary>Expected benefit.</summary>
    public const string Benefit = "benefit";

    /// <summary>Expected finish time.</summary>
    public const string ExpectedFinish = "expected-finish";
}
