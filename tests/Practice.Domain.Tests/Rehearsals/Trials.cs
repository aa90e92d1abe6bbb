using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

/// <summary>Trials of foods with one-letter names.</summary>
internal static class Trials
{
    public static FoodTrial Of(string foods, bool bad, double dose = 1) =>
        new(
            new LocalDate(2027, 3, 1),
            bad,
            TrialStrains.None,
            foods.ToImmutableDictionary(food => food.ToString(), _ => dose)
        );
}
