using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>
/// What the gut is known to take: read from rehearsals, or the practitioner's own value with her reason. Facts, not
/// aims: the carbohydrate target follows them.
/// </summary>
/// <param name="Tolerated">Highest rate tolerated, g/h; no aim when none was tried.</param>
/// <param name="CleanTrials">Clean trials at that rate.</param>
public sealed record GutTargets(Target Tolerated, Target CleanTrials)
{
    private const int WellTrainedFrom = 3;

    /// <summary>Highest rate tolerated, g/h; null when none was tried.</summary>
    public decimal? ToleratedGPerHour => Tolerated.Aim;

    /// <summary>How well the gut is trained.</summary>
    public GutTraining Training =>
        CleanTrials.Aim switch
        {
            >= WellTrainedFrom => GutTraining.WellTrained,
            >= 1 => GutTraining.Rehearsed,
            _ => GutTraining.NotTrained,
        };

    /// <summary>The same in words.</summary>
    public string TrainingWords =>
        Training switch
        {
            GutTraining.NotTrained => "not trained",
            GutTraining.Rehearsed => "rehearsed",
            _ => "well trained, three clean trials or more",
        };

    /// <summary>The facts of a case.</summary>
    public static GutTargets Of(CourseCase course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return new(ToleratedIn(course), CleanTrialsIn(course));
    }

    private static Target ToleratedIn(CourseCase course)
    {
        var own = course.OverrideOf(CourseTargetKeys.Tolerated, course.Gut.ToleratedGPerHour);
        return new Target
        {
            Key = CourseTargetKeys.Tolerated,
            Name = "Tolerated in rehearsal",
            Aim = own?.Value ?? course.Gut.ToleratedGPerHour,
            Unit = "g/h",
            Override = own,
            Basis = new Basis(
                "highest rate of a rehearsal you passed; after one that did not sit well, 10 g/h below the next rate to try",
                course.Gut.Trials,
                [Sources.RehearsedGut, Sources.RunFuelSteps, Sources.TrialVerdicts],
                course.Gut.Trials.IsEmpty
                    ? "No reviewed rehearsal tells what was taken on the move."
                    : null
            ),
        };
    }

    private static Target CleanTrialsIn(CourseCase course)
    {
        var own = course.OverrideOf(CourseTargetKeys.CleanTrials, course.Gut.CleanTrials);
        return new Target
        {
            Key = CourseTargetKeys.CleanTrials,
            Name = "Trials at that rate",
            Aim = own?.Value ?? course.Gut.CleanTrials,
            Unit = "clean",
            Override = own,
            Basis = new Basis(
                "passed rehearsals with no gut score above 2, not more than 5 g/h below the rate tolerated, since the last about that rate that did not sit well; one makes a rehearsed gut, three a well-trained one",
                course.Gut.Trials,
                [Sources.RehearsedGut, Sources.CourseRates]
            ),
        };
    }
}
