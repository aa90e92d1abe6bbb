using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>Caffeine on the course: half of what was chosen, late, within the limits of dose and day.</summary>
internal static class CourseCaffeineTarget
{
    public static Target Of(CourseCase course)
    {
        var most = CaffeineRules.OnCourseMg(course);
        var half = CaffeineDose.OneDose(
            course.MassKg,
            course.Choices.CaffeineMgPerKg / 2,
            CaffeineRules.AtOnceMg(course)
        );
        var computed = Math.Min(half, most);
        var own = course.OverrideOf(CourseTargetKeys.Caffeine, computed);
        return new Target
        {
            Key = CourseTargetKeys.Caffeine,
            Name = "Caffeine",
            Aim = Math.Min(own?.Value ?? computed, most),
            Override = own,
            High = most,
            Unit = "mg",
            Basis = new Basis(
                "half of the dose chosen, at 60 to 70 % of the race; the day's limit less what came before the start",
                [
                    BasisInput.Of("Chosen", course.Choices.CaffeineMgPerKg, "mg/kg", 1),
                    BasisInput.Of("Before the start", course.Choices.CaffeineBeforeMg, "mg"),
                    BasisInput.Of("At once at most", CaffeineRules.AtOnceMg(course), "mg"),
                ],
                [
                    Sources.EfsaCaffeine2015,
                    Sources.Guest2021,
                    Sources.Carvalho2022,
                    Sources.RaceCaffeine,
                ],
                CaffeineRules.IsRuledOut(course) ? "Ruled out by age or screening."
                    : course.Choices.CaffeineMgPerKg == 0
                        ? "None chosen: caffeine only where it was rehearsed."
                    : "Late in the day it can disturb sleep."
            ),
        };
    }
}
