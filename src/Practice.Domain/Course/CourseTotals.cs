using NodaTime;

namespace Practice.Domain.Course;

/// <summary>What some part of a course plan adds up to.</summary>
/// <param name="CarbohydrateG">Available carbohydrate, g.</param>
/// <param name="GlucoseG">Of it glucose, g.</param>
/// <param name="FructoseG">Of it fructose, g.</param>
/// <param name="FluidMl">Drunk, ml.</param>
/// <param name="SodiumMg">Sodium, mg.</param>
/// <param name="CaffeineMg">Caffeine, mg.</param>
/// <param name="FoodG">Weight of what is eaten, g.</param>
public sealed record CourseTotals(
    decimal CarbohydrateG,
    decimal GlucoseG,
    decimal FructoseG,
    decimal FluidMl,
    decimal SodiumMg,
    decimal CaffeineMg,
    decimal FoodG
)
{
    /// <summary>Sums steps.</summary>
    public static CourseTotals Of(IEnumerable<CourseStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        var sum = new CourseTotals(0, 0, 0, 0, 0, 0, 0);
        foreach (var step in steps)
            sum = new CourseTotals(
                sum.CarbohydrateG + step.CarbohydrateG,
                sum.GlucoseG + step.GlucoseG,
                sum.FructoseG + step.FructoseG,
                sum.FluidMl + step.Ml,
                sum.SodiumMg + step.SodiumMg,
                sum.CaffeineMg + step.CaffeineMg,
                sum.FoodG + step.FoodG
            );
        return sum;
    }
}

/// <summary>One hour of the race; the last may be shorter.</summary>
/// <param name="Number">1 for the first.</param>
/// <param name="From">Begin, since the start.</param>
/// <param name="To">End, since the start.</param>
/// <param name="Totals">What is taken in it.</param>
public sealed record CourseHour(int Number, Duration From, Duration To, CourseTotals Totals);
