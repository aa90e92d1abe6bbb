using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Course;

/// <summary>Carbohydrate an hour by duration and gut, never above what was tolerated in rehearsal and 10 g/h.</summary>
internal static class CourseCarbohydrateTarget
{
    private const decimal AboveTolerated = 10;
    private const decimal GuidelineLow = 30;
    private const decimal MiddlingHigh = 60;
    private const decimal LongHigh = 90;
    private const decimal OptInHigh = 120;

    public static Target Of(CourseCase course)
    {
        if (course.Hours < CourseRateTable.NothingBelowHours)
            return Short(
                course,
                0,
                "less than 45 min: none needed",
                "The bound of 45 min is written from memory."
            );
        if (course.Hours < CourseRateTable.LittleBelowHours)
            return Short(
                course,
                GuidelineLow,
                "about an hour: small amounts or a mouth rinse",
                null
            );
        var gut = GutTargets.Of(course);
        var cell = CourseRateTable.CellOf(course, gut.Training);
        var most = Most(course, gut.ToleratedGPerHour ?? cell.High, cell.High);
        var start = Math.Clamp(gut.ToleratedGPerHour ?? cell.Low, cell.Low, cell.High);
        var own = course.OverrideOf(CourseTargetKeys.Carbohydrate, Math.Min(start, most));
        var aim = Math.Min(own?.Value ?? start, most);
        return new Target
        {
            Key = CourseTargetKeys.Carbohydrate,
            Name = "Carbohydrate",
            Aim = aim,
            Low = Math.Min(GuidelineLow, aim),
            High = most,
            Unit = "g/h",
            Override = own,
            Basis = new Basis(
                "rate by duration and gut training, at most what was tolerated in rehearsal and 10 g/h",
                Inputs(course, gut, cell),
                [Sources.Jeukendrup2014, Sources.Thomas2016, Sources.CourseRates],
                Note(course, gut, aim, (own?.Value ?? start) > most)
            ),
        };
    }

    private static Target Short(CourseCase course, decimal high, string formula, string? note) =>
        new()
        {
            Key = CourseTargetKeys.Carbohydrate,
            Name = "Carbohydrate",
            Low = 0,
            High = Math.Min(high, course.Adjustments.RaceCarbohydrateMaxGPerHour ?? high),
            Unit = "g/h",
            Basis = new Basis(
                formula,
                [BasisInput.Of("Time planned", course.Hours, "h", 2)],
                [Sources.Jeukendrup2014, Sources.Thomas2016],
                note
            ),
        };

    private static decimal Most(CourseCase course, decimal tolerated, decimal cell)
    {
        var guideline =
            course.Choices.AllowAboveNinety ? OptInHigh
            : course.Hours >= CourseRateTable.LongFromHours ? LongHigh
            : Math.Max(MiddlingHigh, cell);
        // sugars: what glucose and fructose together leave
        var sugars = SugarCeiling.GlucoseOf(course) + SugarCeiling.FructoseOf(course);
        return new[]
        {
            guideline,
            tolerated + AboveTolerated,
            sugars,
            course.Adjustments.RaceCarbohydrateMaxGPerHour ?? decimal.MaxValue,
        }.Min();
    }

    private static ImmutableArray<BasisInput> Inputs(
        CourseCase course,
        GutTargets gut,
        (decimal Low, decimal High) cell
    )
    {
        var inputs = ImmutableArray.CreateBuilder<BasisInput>();
        inputs.Add(BasisInput.Of("Time planned", course.Hours, "h", 2));
        inputs.Add(new("Gut", gut.TrainingWords));
        inputs.Add(
            cell.Low == cell.High
                ? BasisInput.Of("Where the table starts", cell.Low, "g/h")
                : new("Where the table starts", $"{cell.Low:0} to {cell.High:0} g/h")
        );
        if (gut.ToleratedGPerHour is { } tolerated)
            inputs.Add(BasisInput.Of("Tolerated in rehearsal", tolerated, "g/h"));
        if (course.Adjustments.RaceCarbohydrateMaxGPerHour is { } screened)
            inputs.Add(BasisInput.Of("At most, by screening", screened, "g/h"));
        return inputs.ToImmutable();
    }

    private static string? Note(CourseCase course, GutTargets gut, decimal aim, bool isHeld)
    {
        var notes = new List<string>();
        if (gut.ToleratedGPerHour is null)
            notes.Add(
                "No rate was rehearsed: the table's rate counts as tolerated until a rehearsal says more."
            );
        if (isHeld)
            notes.Add("The rate wanted is above what is allowed and was held to it.");
        if (aim > LongHigh)
            notes.Add("Above 90 g/h no advantage in performance is proven.");
        if (course.Hours > 3.5m)
            notes.Add("Slower athletes burn less in absolute terms: less may do.");
        if (course.Discipline == Races.Discipline.Walking)
            notes.Add("Walking burns less an hour than running; the table for it is our own.");
        return notes.Count == 0 ? null : string.Join(' ', notes);
    }
}
