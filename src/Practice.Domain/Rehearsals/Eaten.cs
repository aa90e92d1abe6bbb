using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Domain.Rehearsals;

/// <summary>What became of a planned portion.</summary>
public enum EatenHow
{
    /// <summary>Eaten as planned.</summary>
    AsPlanned,

    /// <summary>More or less of it.</summary>
    AnotherAmount,

    /// <summary>Something else in its place.</summary>
    SomethingElse,

    /// <summary>Left.</summary>
    NotEaten,
}

/// <summary>What became of one planned portion.</summary>
/// <param name="FoodId">Key of the planned food.</param>
/// <param name="How">What became of it.</param>
/// <param name="Part">Part of the planned amount that was eaten, 0 to 4: 0.5 for half.</param>
/// <param name="Instead">What was eaten in its place, where the food is known.</param>
/// <param name="Words">What was eaten in its place, in the client's words.</param>
public sealed record EatenPortion(
    string FoodId,
    EatenHow How,
    decimal Part,
    Portion? Instead = null,
    string Words = ""
)
{
    /// <summary>Eaten as planned.</summary>
    public static EatenPortion AsPlanned(string foodId) => new(foodId, EatenHow.AsPlanned, 1);

    /// <summary>A part or a multiple of the planned amount.</summary>
    /// <param name="foodId">Key of the planned food.</param>
    /// <param name="part">0 to 4.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 4.</exception>
    public static EatenPortion Amount(string foodId, decimal part)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(part);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(part, 4);
        return new(foodId, EatenHow.AnotherAmount, part);
    }

    /// <summary>Another food in its place.</summary>
    public static EatenPortion Replaced(string foodId, Portion instead) =>
        new(foodId, EatenHow.SomethingElse, 0, instead);

    /// <summary>Something in its place whose nutrients are not known: it counts as nothing and is shown in words.</summary>
    public static EatenPortion Replaced(string foodId, string words) =>
        new(foodId, EatenHow.SomethingElse, 0, null, words);

    /// <summary>Left on the plate.</summary>
    public static EatenPortion Left(string foodId) => new(foodId, EatenHow.NotEaten, 0);
}

/// <summary>One sitting as it was eaten.</summary>
/// <param name="Date">The day on which it was eaten.</param>
/// <param name="Kind">Which sitting.</param>
/// <param name="Portions">What became of the planned portions; those not told of are not known.</param>
/// <param name="Extras">What was eaten on top.</param>
public sealed record EatenOccasion(
    LocalDate Date,
    OccasionKind Kind,
    ImmutableArray<EatenPortion> Portions,
    ImmutableArray<Portion> Extras
)
{
    /// <summary>The sitting eaten as planned.</summary>
    public static EatenOccasion AsPlanned(RehearsedSitting sitting)
    {
        ArgumentNullException.ThrowIfNull(sitting);
        return new(
            sitting.Date,
            sitting.Kind,
            [.. sitting.Portions.Select(p => EatenPortion.AsPlanned(p.FoodId))],
            []
        );
    }

    /// <summary>What is told of a planned food; null when nothing is.</summary>
    public EatenPortion? Find(string foodId) => Portions.FirstOrDefault(p => p.FoodId == foodId);
}
