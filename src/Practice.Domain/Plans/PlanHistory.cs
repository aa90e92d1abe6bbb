using System.Collections.Immutable;

namespace Practice.Domain.Plans;

/// <summary>A plan under edit with what came before and what was undone.</summary>
/// <param name="Present">The plan as it stands.</param>
/// <param name="Past">Earlier states, latest on top.</param>
/// <param name="Future">Undone states, next on top.</param>
public sealed record PlanHistory(
    RaceWeekPlan Present,
    ImmutableStack<RaceWeekPlan> Past,
    ImmutableStack<RaceWeekPlan> Future
)
{
    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => !Past.IsEmpty;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => !Future.IsEmpty;

    /// <summary>A history without a past.</summary>
    public static PlanHistory Of(RaceWeekPlan plan) => new(plan, [], []);

    /// <summary>After an edit; what was undone is gone.</summary>
    public PlanHistory Then(RaceWeekPlan edited) => new(edited, Past.Push(Present), []);

    /// <summary>One step back.</summary>
    public PlanHistory Undo() =>
        CanUndo ? new(Past.Peek(), Past.Pop(), Future.Push(Present)) : this;

    /// <summary>One step forward again.</summary>
    public PlanHistory Redo() =>
        CanRedo ? new(Future.Peek(), Past.Push(Present), Future.Pop()) : this;
}
