namespace Practice.Domain.Course;

/// <summary>Stable keys of the course's targets.</summary>
public static class CourseTargetKeys
{
    /// <summary>Carbohydrate an hour.</summary>
    public const string Carbohydrate = "course-carbohydrate";

    /// <summary>Glucose an hour.</summary>
    public const string Glucose = "course-glucose";

    /// <summary>Fructose an hour.</summary>
    public const string Fructose = "course-fructose";

    /// <summary>Strength over 40 min.</summary>
    public const string DrinkStrength = "course-drink-strength";

    /// <summary>Drinking an hour.</summary>
    public const string Fluid = "course-fluid";

    /// <summary>Sodium of a litre.</summary>
    public const string Sodium = "course-sodium";

    /// <summary>Caffeine on the course.</summary>
    public const string Caffeine = "course-caffeine";

    /// <summary>Energy of the race.</summary>
    public const string Energy = "course-energy";

    /// <summary>Rate tolerated in rehearsal.</summary>
    public const string Tolerated = "course-tolerated";

    /// <summary>Clean trials at that rate.</summary>
    public const string CleanTrials = "course-clean-trials";
}
