using Practice.Service.Today;
using Practice.Web.Parts;

namespace Practice.Web.Features.Today;

/// <summary>The kinds of today's work in words.</summary>
internal static class TodayWords
{
    public static string Title(TodayKind kind) =>
        kind switch
        {
            TodayKind.WarningSign => "Warning signs",
            TodayKind.PlanToIssue => "Plans to issue",
            TodayKind.HoldToClear => "Holds to clear",
            TodayKind.FeedbackToReview => "Feedback to review",
            TodayKind.RehearsalToBook => "Rehearsals to book",
            TodayKind.PlanToBuild => "Plans to build",
            TodayKind.RaceThisWeek => "Races this week",
            TodayKind.RaceJustRun => "Races just run",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
        };

    /// <summary>4 plans to issue</summary>
    public static string Count(TodayKind kind, int count) =>
        kind switch
        {
            TodayKind.WarningSign => Say.Count(count, "warning sign", "warning signs"),
            TodayKind.PlanToIssue => Say.Count(count, "plan to issue", "plans to issue"),
            TodayKind.HoldToClear => Say.Count(count, "hold to clear", "holds to clear"),
            TodayKind.FeedbackToReview => Say.Count(
                count,
                "rehearsal to review",
                "rehearsals to review"
            ),
            TodayKind.RehearsalToBook => Say.Count(
                count,
                "rehearsal to book",
                "rehearsals to book"
            ),
            TodayKind.PlanToBuild => Say.Count(count, "plan to build", "plans to build"),
            TodayKind.RaceThisWeek => Say.Count(count, "race this week", "races this week"),
            TodayKind.RaceJustRun => Say.Count(count, "race just run", "races just run"),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
        };

    public static Glyph Glyph(TodayKind kind) =>
        kind switch
        {
            TodayKind.WarningSign => Parts.Glyph.Warning,
            TodayKind.FeedbackToReview => Parts.Glyph.Feedback,
            TodayKind.RehearsalToBook => Parts.Glyph.Calendar,
            TodayKind.PlanToIssue => Parts.Glyph.Send,
            TodayKind.HoldToClear => Parts.Glyph.Stop,
            TodayKind.PlanToBuild => Parts.Glyph.Foods,
            TodayKind.RaceThisWeek => Parts.Glyph.Flag,
            TodayKind.RaceJustRun => Parts.Glyph.Check,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
        };

    /// <summary>Where the work is done: a hold on the client's screening, a draft on the workbench, else the race.</summary>
    public static string Address(TodayItem item) =>
        item switch
        {
            { RehearsalId: { } rehearsal } => $"/rehearsals/{rehearsal}",
            { Kind: TodayKind.RehearsalToBook } => $"/races/{item.Race.RaceId}#rehearsals",
            { Kind: TodayKind.RaceJustRun } => $"/races/{item.Race.RaceId}/debrief",
            { Kind: TodayKind.HoldToClear } => $"/clients/{item.Race.ClientId}/screening",
            { Kind: TodayKind.PlanToIssue, Race.LatestPlan: { } plan } => $"/plans/{plan.Id}",
            _ => $"/races/{item.Race.RaceId}",
        };
}
