using Practice.Domain.Physiology;

namespace Practice.Domain.Course;

/// <summary>How much caffeine the course may bring, and when.</summary>
public static class CaffeineRules
{
    /// <summary>Most for a whole race in the heat (own rule), mg/kg.</summary>
    public const decimal HotMgPerKg = 3;

    /// <summary>Where the second half is taken: 60 to 70 % of the race.</summary>
    public const decimal WindowFrom = 0.60m;

    /// <summary>End of that window.</summary>
    public const decimal WindowTo = 0.70m;

    /// <summary>Whether screening or age rule it out.</summary>
    public static bool IsRuledOut(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return !course.IsAdult
            || course.Adjustments.NoRaceCaffeine
            || course.Adjustments.CaffeineMaxMgPerDay == 0;
    }

    /// <summary>Most at once, mg.</summary>
    public static decimal AtOnceMg(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return IsRuledOut(course)
            ? 0
            : Math.Min(
                CaffeineDose.AtOnceMg,
                course.Adjustments.CaffeineMaxMgPerIntake ?? CaffeineDose.AtOnceMg
            );
    }

    /// <summary>Most on the course, mg: what dose and day leave after what was taken before the start.</summary>
    public static decimal OnCourseMg(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        if (IsRuledOut(course))
            return 0;
        var perKg = CourseHeat.IsHot(course.Choices)
            ? Math.Min(course.Choices.CaffeineMgPerKg, HotMgPerKg)
            : course.Choices.CaffeineMgPerKg;
        var aDay = Math.Min(
            CaffeineDose.ADayMg,
            course.Adjustments.CaffeineMaxMgPerDay ?? CaffeineDose.ADayMg
        );
        var race = Math.Min(course.MassKg * perKg, aDay);
        return CaffeineDose.Allowed(race, course.Choices.CaffeineBeforeMg, race);
    }
}
