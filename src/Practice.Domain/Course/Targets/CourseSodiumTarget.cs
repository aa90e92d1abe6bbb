using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>Sodium with what is drunk; no advice where screening switches added sodium off. Checks F09, F10.</summary>
internal static class CourseSodiumTarget
{
    private const decimal LowMgPerL = 300;
    private const decimal HighMgPerL = 600;
    private const decimal MgPerMmol = 22.99m;
    private const decimal HeavySweat = 1.2m;

    public static Target Of(CourseCase course) =>
        new()
        {
            Key = CourseTargetKeys.Sodium,
            Name = "Sodium",
            Low = course.Adjustments.NoAddedSodium ? null : LowMgPerL,
            High = course.Adjustments.NoAddedSodium ? null : HighMgPerL,
            Unit = "mg/L drunk",
            Basis = new Basis(
                course.Adjustments.NoAddedSodium
                    ? "none added: screening"
                    : "300 to 600 mg for each litre drunk",
                Inputs(course),
                [Sources.SodiumPerLitre, Sources.HewButler2015],
                Note(course)
            ),
        };

    private static ImmutableArray<BasisInput> Inputs(CourseCase course) =>
        course.Choices is { SweatLPerHour: { } sweat, SweatSodiumMmolPerL: { } sodium }
            ? [BasisInput.Of("Lost in sweat", sweat * sodium * MgPerMmol, "mg/h")]
            : [];

    private static string Note(CourseCase course)
    {
        if (course.Adjustments.NoAddedSodium)
            return "What drinks and gels hold of themselves is counted and not aimed at. The physician's word goes first.";
        var more =
            course.Choices.SweatLPerHour > HeavySweat || course.Hours > 2
                ? "Consider the upper half: long or heavy sweating. "
                : "";
        return more
            + "Full replacement is no goal, and sodium does not protect against drinking too much.";
    }
}
