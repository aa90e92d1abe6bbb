using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>What a course plan is held against, each with its basis.</summary>
public sealed record CourseTargets
{
    /// <summary>Strength over 40 min above which a plan warns, % w/v.</summary>
    public const decimal StrengthWarns = 10;

    /// <summary>Strength above which it warns strongly, % w/v.</summary>
    public const decimal StrengthWarnsStrongly = 14;

    /// <summary>Carbohydrate, g/h: aim and band.</summary>
    public required Target Carbohydrate { get; init; }

    /// <summary>Glucose ceiling, g/h.</summary>
    public required Target Glucose { get; init; }

    /// <summary>Fructose ceiling, g/h.</summary>
    public required Target Fructose { get; init; }

    /// <summary>Strength of drink and food together over any 40 min, % w/v.</summary>
    public required Target DrinkStrength { get; init; }

    /// <summary>Drinking, L/h: floor, aim and ceiling.</summary>
    public required Target Fluid { get; init; }

    /// <summary>Sodium, mg per litre drunk.</summary>
    public required Target Sodium { get; init; }

    /// <summary>Caffeine on the course, mg.</summary>
    public required Target Caffeine { get; init; }

    /// <summary>Energy the race costs, net of rest, kcal; no aim where it can not be known.</summary>
    public required Target Energy { get; init; }

    /// <summary>All of them, in the order in which they are read.</summary>
    public ImmutableArray<Target> All =>
        [Carbohydrate, Glucose, Fructose, DrinkStrength, Fluid, Sodium, Caffeine, Energy];

    /// <summary>Whether a practitioner's own value may take the place of a target's aim. Ceilings stand.</summary>
    public static bool TakesOwnValue(Target target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return target.Aim is not null
            || target.Key is CourseTargetKeys.Energy or CourseTargetKeys.Tolerated;
    }

    /// <summary>The targets of a case.</summary>
    public static CourseTargets For(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return new CourseTargets
        {
            Carbohydrate = CourseCarbohydrateTarget.Of(course),
            Glucose = SugarCeiling.Glucose(course),
            Fructose = SugarCeiling.Fructose(course),
            DrinkStrength = Strength,
            Fluid = CourseFluidTarget.Of(course),
            Sodium = CourseSodiumTarget.Of(course),
            Caffeine = CourseCaffeineTarget.Of(course),
            Energy = CourseEnergyTarget.Of(course),
        };
    }

    private static Target Strength { get; } =
        new()
        {
            Key = CourseTargetKeys.DrinkStrength,
            Name = "Strength over 40 min",
            High = StrengthWarns,
            Unit = "%",
            Decimals = 1,
            Basis = new Basis(
                "carbohydrate ÷ fluid of any 40 min, solids counted in",
                [BasisInput.Of("Warns strongly above", StrengthWarnsStrongly, "%")],
                [Sources.StrengthOver40Minutes, Sources.WaterWithGel],
                "Usual drinks hold 4 to 8 %. A gel without water is stronger than any drink."
            ),
        };
}
