using System.Collections.Immutable;
using Practice.Domain.Evidence;

namespace Practice.Domain.Screening;

/// <summary>What every handout says, whoever reads it.</summary>
internal static class GeneralCautions
{
    /// <summary>In the order in which they are read.</summary>
    public static ImmutableArray<Caution> All { get; } =
    [
        new(
            "general-care-team-first",
            "Your doctor, your care team and the rules of licensed practice where you live come first: "
                + "where they say "
                + "something else than this plan, follow them.",
            ForClient: true,
            Sources.DieteticPractice
        ),
        new(
            "general-no-diagnosis",
            "This plan is advice on food and drink. It does not diagnose or treat any illness. If you feel unwell, "
                + "stop and ask.",
            ForClient: true,
            Sources.DieteticPractice
        ),
        new(
            "general-painkillers",
            "Take no anti-inflammatory painkillers such as ibuprofen before, during or soon after the race "
                + "unless your "
                + "doctor has told you to: with long effort they can harm the kidneys and the gut.",
            ForClient: true,
            Sources.Lipman2017
        ),
    ];
}
