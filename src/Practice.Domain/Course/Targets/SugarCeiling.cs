using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>Ceilings of the single sugars an hour: each has its own way through the gut wall.</summary>
public static class SugarCeiling
{
    /// <summary>Glucose above this blocks, g/h.</summary>
    public const decimal GlucoseBlocksAbove = 67;

    /// <summary>Fructose above this blocks, g/h.</summary>
    public const decimal FructoseBlocksAbove = 54;

    /// <summary>Above this rate fructose is needed, g/h.</summary>
    public const decimal MixedAbove = 60;

    /// <summary>Least fructose for a gram of glucose above that rate.</summary>
    public const decimal LeastFructoseToGlucose = 0.4m;

    private const decimal GlucoseWarns = 60;
    private const decimal FructoseWarns = 45;

    /// <summary>Glucose of an hour that plans keep to, g; rates decided above 90 g/h reach up to the block.</summary>
    public static decimal GlucoseOf(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course.Choices.AllowAboveNinety ? GlucoseBlocksAbove : GlucoseWarns;
    }

    /// <summary>Fructose of an hour that plans keep to, g.</summary>
    public static decimal FructoseOf(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        var general = course.Choices.AllowAboveNinety ? FructoseBlocksAbove : FructoseWarns;
        return Math.Min(general, course.Adjustments.RaceFructoseMaxGPerHour ?? general);
    }

    internal static Target Glucose(CourseCase course) =>
        new()
        {
            Key = CourseTargetKeys.Glucose,
            Name = "Glucose and starch",
            High = GlucoseOf(course),
            Unit = "g/h",
            Basis = new Basis(
                "about 1 g a minute of the glucose kind is all that is taken up",
                [],
                [Sources.Jeukendrup2014, Sources.SugarCeilings],
                "Maltodextrin and starch count as glucose, sucrose half and half."
            ),
        };

    internal static Target Fructose(CourseCase course)
    {
        var screened = course.Adjustments.RaceFructoseMaxGPerHour;
        return new Target
        {
            Key = CourseTargetKeys.Fructose,
            Name = "Fructose",
            High = FructoseOf(course),
            Unit = "g/h",
            Basis = new Basis(
                screened is null
                    ? "at most 45 g/h, never above 54 g/h"
                    : "at most what screening allows",
                screened is { } most ? [BasisInput.Of("At most, by screening", most, "g/h")] : [],
                [Sources.Podlogar2022, Sources.Rowlands2015, Sources.SugarCeilings],
                "Above 60 g/h in all, some of it must be fructose: two parts to one up to 90 g/h, 1 to 0.8 above."
            ),
        };
    }
}
