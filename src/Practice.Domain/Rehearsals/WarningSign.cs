using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Screening;

namespace Practice.Domain.Rehearsals;

/// <summary>What belongs before a doctor and is no question of food.</summary>
public enum WarningSign
{
    /// <summary>Blood in the stool, or black stool.</summary>
    BloodInStool,

    /// <summary>Blood in what was vomited.</summary>
    BloodInVomit,

    /// <summary>Collapse, or fainting.</summary>
    Collapse,

    /// <summary>Vomiting again and again.</summary>
    RepeatedVomiting,

    /// <summary>Chest pain.</summary>
    ChestPain,
}

/// <summary>What a sign sets off: words for the client, and a hold on every plan until a doctor has been seen.</summary>
public static class WarningSigns
{
    /// <summary>Key of the hold.</summary>
    public const string HoldKey = "rehearsal-warning-sign";

    /// <summary>Title of the hold.</summary>
    public const string HoldTitle = "Warning sign in a rehearsal";

    /// <summary>What the client reads at once. Holds no number.</summary>
    public static Caution Advice { get; } =
        new(
            "rehearsal-see-doctor",
            "What you report belongs before a doctor and is not a matter of food. Chest pain, collapse, blood in what you "
                + "vomit or vomiting that does not stop: get emergency help now. Blood in the stool: see a doctor soon, and "
                + "the same day if there is much of it or you feel faint. Do not rehearse or race until a doctor has said so.",
            ForClient: true,
            Sources.WarningSigns
        );

    /// <summary>The hold that signs raise; null without any.</summary>
    public static Hold? Hold(ImmutableArray<WarningSign> signs) =>
        signs.IsEmpty
            ? null
            : new(
                HoldKey,
                HoldTitle,
                $"Reported: {string.Join(", ", signs.Distinct().Order().Select(InWords))}. A physician's clearance is needed "
                    + "before the next rehearsal or plan.",
                Sources.WarningSigns
            );

    /// <summary>
    /// The hold of a client's rehearsals that stands on a day; null without any. A clearance lifts the signs of rehearsals
    /// up to its own date: a sign told later needs another.
    /// </summary>
    /// <param name="rehearsals">Rehearsals of one client.</param>
    /// <param name="clearances">What professionals said.</param>
    /// <param name="today">The day.</param>
    public static Hold? Standing(
        IEnumerable<Rehearsal> rehearsals,
        IEnumerable<Clearance> clearances,
        LocalDate today
    )
    {
        var given = clearances.ToList();
        return Hold([
            .. rehearsals
                .Where(r => r.Feedback is not null)
                .SelectMany(r =>
                    r.Feedback!.WarningSigns.Where(sign =>
                        !given.Any(c =>
                            c.On >= LocalDate.Min(r.RunOn, r.Feedback.ReceivedAt.InUtc().Date)
                            && Hold([sign])!.IsLiftedBy(c, today)
                        )
                    )
                ),
        ]);
    }

    /// <summary>A sign in words.</summary>
    public static string InWords(this WarningSign sign) =>
        sign switch
        {
            WarningSign.BloodInStool => "blood in the stool",
            WarningSign.BloodInVomit => "blood in the vomit",
            WarningSign.Collapse => "collapse or fainting",
            WarningSign.RepeatedVomiting => "repeated vomiting",
            _ => "chest pain",
        };
}
