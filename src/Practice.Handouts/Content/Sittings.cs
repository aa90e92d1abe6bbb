using Practice.Domain.Foods;

namespace Practice.Handouts.Content;

/// <summary>Names of sittings on paper.</summary>
internal static class Sittings
{
    public static string Name(OccasionKind kind, HouseholdUnits units) =>
        kind switch
        {
            OccasionKind.Breakfast => "Breakfast",
            OccasionKind.MorningSnack => "Morning snack",
            OccasionKind.Lunch => "Lunch",
            OccasionKind.AfternoonSnack => "Afternoon snack",
            OccasionKind.LateAfternoonSnack => "Late snack",
            OccasionKind.EveningMeal when units == HouseholdUnits.UsCustomary => "Dinner",
            OccasionKind.EveningMeal => "Evening meal",
            OccasionKind.Supper when units == HouseholdUnits.UsCustomary => "Evening snack",
            OccasionKind.Supper => "Supper",
            _ => kind.ToString(),
        };

    /// <summary>Below a bar.</summary>
    public static string ShortName(OccasionKind kind, HouseholdUnits units) =>
        kind switch
        {
            OccasionKind.Breakfast => "Breakfast",
            OccasionKind.MorningSnack => "Morning",
            OccasionKind.Lunch => "Lunch",
            OccasionKind.AfternoonSnack => "Afternoon",
            OccasionKind.LateAfternoonSnack => "Late",
            OccasionKind.EveningMeal when units == HouseholdUnits.UsCustomary => "Dinner",
            OccasionKind.EveningMeal => "Evening",
            OccasionKind.Supper when units == HouseholdUnits.UsCustomary => "Night",
            OccasionKind.Supper => "Supper",
            _ => kind.ToString(),
        };
}
