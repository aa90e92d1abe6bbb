using System.Collections.Immutable;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Screening;

namespace Practice.Domain.Rehearsals;

/// <summary>
/// A rehearsal as it is read: planned against eaten, symptoms, and what they come to. Computed from the plan and the
/// feedback; never stored.
/// </summary>
public sealed record RehearsalReview
{
    /// <summary>The rehearsal.</summary>
    public required RehearsalDetails Details { get; init; }

    /// <summary>What the client told.</summary>
    public required Feedback Feedback { get; init; }

    /// <summary>Sitting by sitting.</summary>
    public required ImmutableArray<SittingReview> Sittings { get; init; }

    /// <summary>Carbohydrate planned, g/kg in 24 h: aims of the sittings over their part of a full day.</summary>
    public required decimal PlannedGPerKg { get; init; }

    /// <summary>Carbohydrate eaten, g/kg in 24 h.</summary>
    public required decimal EatenGPerKg { get; init; }

    /// <summary>Whether the client was loaded; null where the part rehearsed plans no carbohydrate.</summary>
    public required Compliance? Compliance { get; init; }

    /// <summary>Symptoms, summarised.</summary>
    public required SymptomSummary Symptoms { get; init; }

    /// <summary>The tool's verdict; the practitioner's own may differ.</summary>
    public required TrialVerdict Verdict { get; init; }

    /// <summary>Which scores pass and fail.</summary>
    public required SymptomThresholds Thresholds { get; init; }

    /// <summary>The hold that warning signs raise; null without any.</summary>
    public Hold? Hold => WarningSigns.Hold(Feedback.WarningSigns);

    /// <summary>Carbohydrate planned, g: the aims of the sittings.</summary>
    public decimal PlannedCarbohydrateG => Sittings.Sum(s => s.Sitting.CarbohydrateAimG);

    /// <summary>Nutrients eaten.</summary>
    public Nutrients Eaten =>
        Sittings.Aggregate(Nutrients.Zero, (sum, sitting) => sum + sitting.Eaten);

    /// <summary>Portions of which it is not known what was eaten; they count as nothing, so that intake is at least what is shown.</summary>
    public int Unknown => Sittings.Sum(s => s.Portions.Count(p => p.IsUnknown));

    /// <summary>Where compliance and verdict come from.</summary>
    public static ImmutableArray<Source> References { get; } =
    [Sources.Compliance, Sources.TrialVerdicts, Sources.Gaskell2019];

    /// <summary>Reads what came back.</summary>
    /// <param name="details">The rehearsal as booked.</param>
    /// <param name="plan">The plan of the version rehearsed.</param>
    /// <param name="feedback">What the client told.</param>
    /// <param name="thresholds">Which scores pass and fail.</param>
    public static RehearsalReview Of(
        RehearsalDetails details,
        RaceWeekPlan plan,
        Feedback feedback,
        SymptomThresholds thresholds
    )
    {
        ArgumentNullException.ThrowIfNull(details);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(feedback);
        var sittings = details
            .Part.Sittings(plan, details.RunOn, details.Dose)
            .Select(sitting =>
                SittingReview.Of(
                    sitting,
                    feedback.Occasions.FirstOrDefault(o =>
                        o.Date == sitting.Date && o.Kind == sitting.Kind
                    )
                )
            )
            .ToImmutableArray();
        var (planned, eaten) = PerKg(sittings, plan, details.Dose);
        return new()
        {
            Details = details,
            Feedback = feedback,
            Sittings = sittings,
            PlannedGPerKg = planned,
            EatenGPerKg = eaten,
            Compliance = planned > 0 ? ComplianceRule.Of(details.Kind, planned, eaten) : null,
            Symptoms = SymptomSummary.Of(feedback.Symptoms, feedback.Run?.Time),
            Verdict = TrialVerdicts.Of(feedback, thresholds),
            Thresholds = thresholds,
        };
    }

    // an evening of 140 g out of a day of 700 g is a fifth of a day: rates compare only over the same length
    private static (decimal Planned, decimal Eaten) PerKg(
        ImmutableArray<SittingReview> sittings,
        RaceWeekPlan plan,
        decimal dose
    )
    {
        var aim = sittings.Sum(s => s.Sitting.CarbohydrateAimG);
        if (plan.Targets.CarbohydratePerDay.Aim is not ({ } fullDay and > 0) || aim == 0)
            return (0, 0);
        var kgDays = plan.Header.BodyMass.Kilograms * aim / (fullDay * dose);
        return (aim / kgDays, sittings.Sum(s => s.Eaten.CarbohydrateG) / kgDays);
    }
}
