namespace Practice.Web.Features.Settings.Audit;

/// <summary>What was done, in words: the keys are words already.</summary>
internal static class AuditWords
{
    /// <summary>What is asked for most, for the list to choose from.</summary>
    public static IReadOnlyList<string> Known { get; } =
    [
        "record-read",
        "client-registered",
        "client-revised",
        "client-weighed",
        "client-assigned",
        "screening-answered",
        "hold-cleared",
        "race-entered",
        "plan-drafted",
        "plan-edited",
        "plan-issued",
        "plan-withdrawn",
        "plan-printed",
        "handout-sent",
        "rehearsal-booked",
        "rehearsal-moved",
        "feedback-recorded",
        "rehearsal-reviewed",
        "tastes-learnt",
        "food-added",
        "food-revised",
        "food-retired",
        "signed-in",
        "password-reset",
        "passkey-added",
        "member-invited",
        "invitation-accepted",
        "role-changed",
        "member-deactivated",
        "mail-server-set",
        "audit-exported",
    ];

    /// <summary>Plan issued, for <c>plan-issued</c></summary>
    public static string Of(string what) =>
        what.Length == 0 ? what : $"{char.ToUpperInvariant(what[0])}{what[1..].Replace('-', ' ')}";
}
