using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;

namespace Practice.Domain.Rehearsals;

/// <summary>A planned portion, or an extra, and what became of it.</summary>
/// <param name="Planned">The portion asked for; null for an extra.</param>
/// <param name="Told">What the client told; null when nothing.</param>
/// <param name="Eaten">What was eaten, g of food by key.</param>
/// <param name="Nutrients">Nutrients eaten.</param>
public sealed record PortionReview(
    Portion? Planned,
    EatenPortion? Told,
    (string FoodId, string Name, decimal Grams)? Eaten,
    Nutrients Nutrients
)
{
    /// <summary>Whether what was eaten is not known: nothing told, or something in its place that no food is known for.</summary>
    public bool IsUnknown =>
        Planned is not null && Told is null or { How: EatenHow.SomethingElse, Instead: null };

    internal static PortionReview Of(Portion planned, EatenPortion? told) =>
        told switch
        {
            { How: EatenHow.SomethingElse, Instead: { } other } => new(
                planned,
                told,
                (other.FoodId, other.Name, other.Grams),
                other.Nutrients
            ),
            { How: EatenHow.AsPlanned or EatenHow.AnotherAmount, Part: > 0 } => new(
                planned,
                told,
                (planned.FoodId, planned.Name, planned.Grams * told.Part),
                planned.Nutrients.Times(told.Part)
            ),
            _ => new(planned, told, null, Nutrients.Zero),
        };

    internal static PortionReview Extra(Portion extra) =>
        new(null, null, (extra.FoodId, extra.Name, extra.Grams), extra.Nutrients);
}

/// <summary>One sitting, planned against eaten.</summary>
/// <param name="Sitting">What was asked for.</param>
/// <param name="Portions">Portion by portion, extras last.</param>
public sealed record SittingReview(RehearsedSitting Sitting, ImmutableArray<PortionReview> Portions)
{
    /// <summary>Carbohydrate on the plates as planned, g.</summary>
    public decimal PlannedCarbohydrateG => Sitting.Portions.Sum(p => p.Nutrients.CarbohydrateG);

    /// <summary>Nutrients eaten.</summary>
    public Nutrients Eaten =>
        Portions.Aggregate(Nutrients.Zero, (sum, portion) => sum + portion.Nutrients);

    /// <summary>Part of the planned carbohydrate that was eaten; null where none was planned.</summary>
    public decimal? Part =>
        PlannedCarbohydrateG == 0 ? null : Eaten.CarbohydrateG / PlannedCarbohydrateG;

    /// <summary>Sets a sitting against what was told of it.</summary>
    public static SittingReview Of(RehearsedSitting sitting, EatenOccasion? told)
    {
        ArgumentNullException.ThrowIfNull(sitting);
        return new(
            sitting,
            [
                .. sitting.Portions.Select(p => PortionReview.Of(p, told?.Find(p.FoodId))),
                .. (told?.Extras ?? []).Select(PortionReview.Extra),
            ]
        );
    }

    /// <summary>The day.</summary>
    public LocalDate Date => Sitting.Date;

    /// <summary>Which sitting.</summary>
    public OccasionKind Kind => Sitting.Kind;
}
