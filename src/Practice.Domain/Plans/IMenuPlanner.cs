using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;

namespace Practice.Domain.Plans;

/// <summary>Whether days differ from one another or repeat.</summary>
public enum MenuStyle
{
    /// <summary>Different foods on each day.</summary>
    Vary,

    /// <summary>The same day again: less to buy, less to think about.</summary>
    Repeat,
}

/// <summary>What the planner is asked to fill with food.</summary>
public sealed record MenuRequest
{
    /// <summary>Body mass, for limits per kilogram.</summary>
    public required BodyMass BodyMass { get; init; }

    /// <summary>The days with their sittings and limits; portions on them are the present menu, or none.</summary>
    public required ImmutableArray<PlanDay> Days { get; init; }

    /// <summary>Foods the client may eat: everything excluded or disliked has been taken out.</summary>
    public required ImmutableArray<Food> Foods { get; init; }

    /// <summary>What is liked, tolerated, suspect.</summary>
    public Tastes Tastes { get; init; } = Tastes.Unknown;

    /// <summary>Different days or the same again.</summary>
    public MenuStyle Style { get; init; }

    /// <summary>Kitchen words of the portions.</summary>
    public HouseholdUnits Units { get; init; }

    /// <summary>Same request and seed, same menu.</summary>
    public int Seed { get; init; }
}

/// <summary>How far a build has come, with the best menu so far.</summary>
/// <param name="Step">What is being done, for a person to read.</param>
/// <param name="Fraction">0 to 1.</param>
/// <param name="Days">Best menu so far; null before the first complete one.</param>
/// <param name="Cost">The planner's own penalty of it: lower is better.</param>
public sealed record MenuProgress(
    string Step,
    double Fraction,
    ImmutableArray<PlanDay>? Days,
    double Cost
);

/// <summary>A menu, and what it could not keep.</summary>
/// <param name="Days">The days, filled.</param>
/// <param name="Shortfalls">Limits the menu does not keep; empty when it keeps all.</param>
/// <param name="Cost">The planner's own penalty: lower is better.</param>
/// <param name="WasCancelled">Whether it was cut short and is the best so far.</param>
public sealed record MenuResult(
    ImmutableArray<PlanDay> Days,
    ImmutableArray<Shortfall> Shortfalls,
    double Cost,
    bool WasCancelled = false
);

/// <summary>What a limit is about.</summary>
public enum LimitKind
{
    /// <summary>Carbohydrate of the day.</summary>
    DayCarbohydrate,

    /// <summary>Carbohydrate of a sitting.</summary>
    OccasionCarbohydrate,

    /// <summary>Fibre ceiling.</summary>
    Fibre,

    /// <summary>Fat ceiling.</summary>
    Fat,

    /// <summary>Protein floor.</summary>
    ProteinFloor,

    /// <summary>Protein ceiling.</summary>
    ProteinCeiling,

    /// <summary>Share of carbohydrate drunk.</summary>
    DrinksShare,

    /// <summary>Fructose of a sitting.</summary>
    Fructose,

    /// <summary>Lactose of a sitting or a day.</summary>
    Lactose,

    /// <summary>Weight of a sitting.</summary>
    OccasionWeight,

    /// <summary>Sodium range.</summary>
    Sodium,

    /// <summary>Share of sugary foods.</summary>
    SugaryShare,

    /// <summary>How often a food or a kind of food comes in a day.</summary>
    Variety,

    /// <summary>A locked portion or a meal's own sense.</summary>
    MealSense,
}

/// <summary>A limit that a menu misses.</summary>
/// <param name="Kind">Which limit.</param>
/// <param name="Date">The day.</param>
/// <param name="Occasion">The sitting; null when the whole day is meant.</param>
/// <param name="Amount">By how much, in the unit of the limit.</param>
/// <param name="Text">In words: "Fibre on Saturday is 18.2 g; the ceiling is 15 g".</param>
public sealed record Shortfall(
    LimitKind Kind,
    LocalDate Date,
    OccasionKind? Occasion,
    decimal Amount,
    string Text
);

/// <summary>A change of one limit that would let the rest be kept.</summary>
/// <param name="Kind">Which limit.</param>
/// <param name="Date">The day.</param>
/// <param name="From">The limit as it is.</param>
/// <param name="To">The limit that works, as found.</param>
/// <param name="Certain">The least that any menu needs, proven; null when not known.</param>
/// <param name="Text">In words: "Raise fibre to 18 g: at least 16.2 g is certain".</param>
public sealed record Relaxation(
    LimitKind Kind,
    LocalDate Date,
    decimal From,
    decimal To,
    decimal? Certain,
    string Text
);

/// <summary>Limits that cannot be kept together, and the least that would resolve it, best first.</summary>
/// <param name="Kinds">The limits that clash.</param>
/// <param name="Proven">Whether it is proven that no menu keeps them; a search that ran out of time proves nothing.</param>
/// <param name="Text">In words.</param>
/// <param name="Relaxations">What to change, in the order in which it should be tried.</param>
public sealed record MenuConflict(
    ImmutableArray<LimitKind> Kinds,
    bool Proven,
    string Text,
    ImmutableArray<Relaxation> Relaxations
);

/// <summary>Another food for a portion.</summary>
/// <param name="Portion">The portion as it would stand.</param>
/// <param name="CarbohydrateDifferenceG">Change of the sitting's carbohydrate, g, within 3.</param>
/// <param name="Note">Why it stands here: "tolerated in rehearsal", "less fibre".</param>
public sealed record SwapOption(Portion Portion, decimal CarbohydrateDifferenceG, string? Note);

/// <summary>One line of what a rebalance changed.</summary>
/// <param name="Occasion">The sitting.</param>
/// <param name="Before">The portion before; null when added.</param>
/// <param name="After">The portion after; null when removed.</param>
public sealed record PortionChange(OccasionKind Occasion, Portion? Before, Portion? After);

/// <summary>A rebalanced day and what changed.</summary>
/// <param name="Day">The day; locked portions as they were.</param>
/// <param name="Changes">What changed.</param>
/// <param name="Shortfalls">Limits it does not keep.</param>
/// <param name="Proven">Whether no smaller change would do.</param>
public sealed record Rebalanced(
    PlanDay Day,
    ImmutableArray<PortionChange> Changes,
    ImmutableArray<Shortfall> Shortfalls,
    bool Proven
);

/// <summary>Fills days with food. The planner decides portions, never what a client may eat.</summary>
public interface IMenuPlanner
{
    /// <summary>
    /// Fills the days. Locked portions stay. The first complete menu is reported after about half a second and
    /// improves from there; cancelling returns the best so far. Deterministic for the same request.
    /// </summary>
    MenuResult Build(
        MenuRequest request,
        IProgress<MenuProgress>? progress,
        CancellationToken cancel
    );

    /// <summary>Restores one day's limits after an edit with the least change around locked portions.</summary>
    Rebalanced Rebalance(MenuRequest request, LocalDate day, CancellationToken cancel);

    /// <summary>Foods that could stand in for a portion, best first, carbohydrate of the sitting within 3 g.</summary>
    ImmutableArray<SwapOption> Swaps(MenuRequest request, PortionRef portion);

    /// <summary>Portions that could be added to a sitting without breaking its sense, best first.</summary>
    ImmutableArray<Portion> Additions(MenuRequest request, LocalDate day, OccasionKind occasion);

    /// <summary>Which limits the days' present menus miss.</summary>
    ImmutableArray<Shortfall> Check(MenuRequest request);

    /// <summary>
    /// Why no menu keeps all limits, and what would help; at the least what the closest menu found would need. Empty when
    /// a menu that keeps all was found, or asking was cut short.
    /// </summary>
    ImmutableArray<MenuConflict> Explain(MenuRequest request, CancellationToken cancel);
}
