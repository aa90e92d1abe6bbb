namespace Practice.Domain.Foods;

/// <summary>A sitting of the day, in its order.</summary>
public enum OccasionKind
{
    /// <summary>First meal of the day.</summary>
    Breakfast,

    /// <summary>Between breakfast and lunch.</summary>
    MorningSnack,

    /// <summary>Midday meal.</summary>
    Lunch,

    /// <summary>Between lunch and the evening meal.</summary>
    AfternoonSnack,

    /// <summary>A second afternoon snack, in days of seven sittings.</summary>
    LateAfternoonSnack,

    /// <summary>Evening meal.</summary>
    EveningMeal,

    /// <summary>Something small before bed.</summary>
    Supper,
}

/// <summary>What the sittings are called.</summary>
public static class OccasionNames
{
    /// <summary>morning snack, for <see cref="OccasionKind.MorningSnack"/></summary>
    public static string InWords(this OccasionKind kind) =>
        kind switch
        {
            OccasionKind.Breakfast => "breakfast",
            OccasionKind.MorningSnack => "morning snack",
            OccasionKind.Lunch => "lunch",
            OccasionKind.AfternoonSnack => "afternoon snack",
            OccasionKind.LateAfternoonSnack => "late afternoon snack",
            OccasionKind.EveningMeal => "evening meal",
            _ => "supper",
        };
}
