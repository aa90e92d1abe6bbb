using Practice.Service.Plans;

namespace Practice.Web.Features.Plans;

/// <summary>Why a plan was not issued, and what to do about it.</summary>
internal static class IssueWords
{
    /// <returns>Null when it was issued.</returns>
    public static string? Of(IssueOutcome outcome) =>
        outcome switch
        {
            Issued => null,
            HeldBy held =>
                $"Not issued: {string.Join(", ", held.Holds.Select(h => h.Title))}. Record the clearance first.",
            UnsafeFoods foods =>
                $"Not issued: the plan serves what this client must not have: {string.Join(", ", foods.Foods)}. Swap it.",
            NothingOnThePlate =>
                "Not issued: a sitting is still empty. Add a food or build the plan anew.",
            CourseStopped course =>
                $"Not issued: the course plan must change first. {string.Join(" ", course.Reasons)}",
            IssueNotAllowed => "Not issued: only a practitioner issues plans.",
            IssuedElsewhere =>
                "Not issued: somebody changed this version meanwhile. Open it again.",
            _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, null),
        };
}
