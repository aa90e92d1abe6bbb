using System.Collections.Immutable;
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
                "Warning sign in a rehearsal",
                $"Reported: {string.Join(", ", signs.Distinct().Order().Select(InWords))}. A physician's clearance is needed "
                    + "before the next rehearsal or plan.",
                Sources.WarningSigns
            );

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
