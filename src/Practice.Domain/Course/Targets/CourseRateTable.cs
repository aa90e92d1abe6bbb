using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>
/// Where carbohydrate an hour starts by duration and gut, inside the guideline ranges: not scaled to body mass or sex
/// (Jeukendrup 2014). The cells are our own rule.
/// </summary>
internal static class CourseRateTable
{
    /// <summary>Below this nothing is needed.</summary>
    public const decimal NothingBelowHours = 0.75m;

    /// <summary>Below this a mouthful or a rinse does.</summary>
    public const decimal LittleBelowHours = 1.25m;

    /// <summary>From here on up to 90 g/h of mixed sugars.</summary>
    public const decimal LongFromHours = 2.5m;

    private const decimal VeryLongAboveHours = 3.5m;

    /// <summary>The cell of the table, g/h: a range only for well-trained guts.</summary>
    public static (decimal Low, decimal High) CellOf(CourseCase course, GutTraining gut) =>
        (course.Discipline, gut, course.Hours) switch
        {
            (Discipline.Walking, GutTraining.NotTrained, _) => (30, 30),
            (Discipline.Walking, GutTraining.Rehearsed, _) => (40, 40),
            (Discipline.Walking, _, _) => (50, 50),
            (_, GutTraining.NotTrained, > VeryLongAboveHours) => (40, 40),
            (_, GutTraining.NotTrained, _) => (45, 45),
            (_, GutTraining.Rehearsed, > VeryLongAboveHours) => (55, 55),
            (_, GutTraining.Rehearsed, _) => (60, 60),
            (_, _, > VeryLongAboveHours) => (60, 75),
            (_, _, >= LongFromHours) => (75, 90),
            _ => (75, 75),
        };
}
