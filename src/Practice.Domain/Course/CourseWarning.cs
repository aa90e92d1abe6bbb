using NodaTime;

namespace Practice.Domain.Course;

/// <summary>How much a warning weighs.</summary>
public enum WarningWeight
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>The practitioner decides with open eyes.</summary>
    Watch,

    /// <summary>Such a plan is not issued.</summary>
    Stop,
}

/// <summary>What a warning is about.</summary>
public enum CourseRule
{
    /// <summary>Carbohydrate an hour against its target.</summary>
    Carbohydrate,

    /// <summary>Glucose an hour.</summary>
    Glucose,

    /// <summary>Fructose an hour.</summary>
    Fructose,

    /// <summary>Strength of what is in the stomach over 40 min.</summary>
    DrinkStrength,

    /// <summary>Drinking an hour, or more drunk than sweated.</summary>
    Fluid,

    /// <summary>Sodium.</summary>
    Sodium,

    /// <summary>Caffeine: how much and when.</summary>
    Caffeine,

    /// <summary>Time between feeds, the first and the last.</summary>
    Interval,

    /// <summary>A product where it can not be had, or more than is carried.</summary>
    Supply,

    /// <summary>A product the client must not have.</summary>
    Product,

    /// <summary>A gel or bar without its water.</summary>
    WaterWithFood,

    /// <summary>Heat of the day.</summary>
    Heat,

    /// <summary>What is not known and would have to be.</summary>
    MissingFact,
}

/// <summary>What speaks against a course plan as it stands. For the practitioner: it may hold numbers with units.</summary>
/// <param name="Rule">What it is about.</param>
/// <param name="Weight">How much it weighs.</param>
/// <param name="Text">In words.</param>
/// <param name="At">From when in the race; null when the whole plan is meant.</param>
public sealed record CourseWarning(
    CourseRule Rule,
    WarningWeight Weight,
    string Text,
    Duration? At = null
);
