using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Physiology;
using Practice.Domain.Races;

namespace Practice.Domain.Plans.Weeks;

/// <summary>The glycogen of a plan from the first loading meal to the finish, with the plan's carbohydrate and without.</summary>
/// <param name="With">As planned.</param>
/// <param name="Without">Usual diet, no breakfast, nothing on the course.</param>
public sealed record FuelStory(FuelCurve With, FuelCurve Without)
{
    /// <summary>
    /// The story of a plan. Null where the runner's facts are not in the plan, or where nothing tells what the course
    /// costs: a ride or a triathlon without a course plan.
    /// </summary>
    public static FuelStory? Of(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (CaseOf(plan) is not { } fuel)
            return null;
        return new(FuelCurve.Of(fuel), FuelCurve.Of(fuel.WithoutCarbohydrate));
    }

    /// <summary>What the curve of a plan is computed from; null where it cannot be.</summary>
    public static FuelCase? CaseOf(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Week is not { Runner: { } runner } week || LegsOf(plan, runner) is not { } legs)
            return null;
        var massKg = (double)plan.Header.BodyMass.Kilograms;
        var start = plan.Header.RaceStart;
        double HoursBefore(LocalDateTime moment) =>
            Period.Between(moment, start, PeriodUnits.Minutes).Minutes / 60.0;
        var first = plan.Days[0];
        var last = plan.Days[^1];
        return new FuelCase
        {
            MassKg = massKg,
            Sex = runner.Sex,
            Vo2Max = runner.Vo2Max,
            Loading = new FuelLoading(
                HoursBefore(first.Date.At(first.Occasions[0].Time)),
                (double)(plan.Targets.CarbohydratePerDay.Aim ?? 0) / massKg
            ),
            NightFrom = Math.Max(6, HoursBefore(last.Date.At(last.Occasions[^1].Time)) - 1),
            BreakfastGPerKg = (double)Planned(week.Morning) / massKg,
            BreakfastAt = HoursBefore(week.Morning.MomentOf(week.Morning.Occasions[0])),
            Course = legs,
            Feeds =
            [
                .. (plan.Course?.Steps ?? [])
                    .Where(s => s.CarbohydrateG > 0)
                    .Select(s => new FuelFeed(s.Elapsed.TotalHours, (double)s.CarbohydrateG)),
            ],
        };
    }

    private static decimal Planned(PlanDay day) =>
        day.Totals.CarbohydrateG > 0 ? day.Totals.CarbohydrateG : day.Limits.CarbohydrateAimG;

    private static ImmutableArray<FuelLeg>? LegsOf(RaceWeekPlan plan, RunnerFacts runner)
    {
        if (plan.Course is { Splits.IsEmpty: false, Targets.Energy.Aim: { } kcal } course)
            return CourseLegs(course, (double)(kcal / plan.Header.BodyMass.Kilograms), runner);
        var hours = (double)(plan.Targets.ExpectedFinish.Aim ?? 0) / 60;
        return hours > 0 && runner.Discipline is Discipline.RoadRunning or Discipline.TrailRunning
            ? FuelLegs.Running((double)plan.Header.DistanceKm, hours, runner.Vo2Max)
            : null;
    }

    /// <summary>
    /// An even effort takes the same power throughout, so the energy of a stretch is its share of the time at even
    /// effort, however it is paced.
    /// </summary>
    private static ImmutableArray<FuelLeg> CourseLegs(
        CoursePlan course,
        double kcalPerKg,
        RunnerFacts runner
    )
    {
        var legs = ImmutableArray.CreateBuilder<FuelLeg>();
        var (effort, hour) = (0.0, 0.0);
        var whole = course.Splits[^1].EvenEffort.TotalHours;
        foreach (var split in course.Splits)
        {
            var end = (
                course.Pacing == Pacing.EvenPace ? split.EvenPace : split.EvenEffort
            ).TotalHours;
            if (end <= hour)
                continue;
            var energy = kcalPerKg * (split.EvenEffort.TotalHours - effort) / whole;
            legs.Add(
                new FuelLeg(
                    (double)split.Km,
                    end,
                    energy,
                    RunningIntensity.OxygenUptake(energy / (end - hour)) / runner.Vo2Max
                )
            );
            (effort, hour) = (split.EvenEffort.TotalHours, end);
        }
        return legs.ToImmutable();
    }
}
