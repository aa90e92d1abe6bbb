using Practice.Service.Rehearsals;

namespace Practice.Web.Features.Rehearsals;

/// <summary>The tasks that the page of one rehearsal hands its work to.</summary>
public sealed record RehearsalDeskWork(
    OpenRehearsal Open,
    MoveRehearsal Move,
    CancelRehearsal Cancel,
    RecordFeedback Record,
    DecideRehearsal Decide
);
