using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Service.Races;

namespace Practice.Service.Plans;

/// <summary>What is checked once more at the moment of issuing, since screening and foods may have changed.</summary>
internal static class IssueChecks
{
    /// <summary>Foods on the plates that the client must not have, with the reason.</summary>
    public static ImmutableArray<string> UnsafeFoods(RaceWeekPlan plan, EligibleFoods foods)
    {
        var banned = foods
            .Excluded.Where(e => e.IsSafety)
            .ToDictionary(e => e.Food.Id, e => e.Reason);
        return
        [
            .. plan
                .EveryDay.SelectMany(d => d.Occasions)
                .SelectMany(o => o.Portions)
                .Where(p => banned.ContainsKey(p.FoodId))
                .Select(p => $"{p.Name} ({banned[p.FoodId]})")
                .Distinct(),
        ];
    }

    /// <summary>Whether a food is on one of the plates.</summary>
    public static bool Serves(RaceWeekPlan plan, string foodId) =>
        plan.EveryDay.SelectMany(d => d.Occasions).Any(o => o.Find(foodId) is not null);

    /// <summary>Why the client must not have a food; null where nothing speaks against it.</summary>
    public static string? WhyUnsafe(string foodId, EligibleFoods foods) =>
        foods.Excluded.FirstOrDefault(e => e.IsSafety && e.Food.Id == foodId)?.Reason;

    /// <summary>The plan with today's cautions, and number-free when screening says so today.</summary>
    public static RaceWeekPlan UpToDate(RaceWeekPlan plan, RaceCase raceCase)
    {
        var screening = raceCase.Screening;
        var fresh = plan.EditWeek(week =>
            WeekLayout
                .Of(
                    plan,
                    raceCase.Client,
                    raceCase.Race.Value,
                    screening.Adjustments,
                    raceCase.Today
                )
                .Freshened(week)
        );
        return fresh with
        {
            Cautions = screening.Cautions,
            NumberFree = screening.Adjustments.NumberFree,
            Fluids = PlanAdvice.Fluids(screening.Adjustments),
            Why = PlanAdvice.Why(plan.Header, plan.Targets, screening.Adjustments),
        };
    }
}
