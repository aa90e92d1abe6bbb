using Practice.Domain.Practices;

namespace Practice.Domain.Rehearsals;

/// <summary>How a trial went for the gut.</summary>
public enum TrialVerdict
{
    /// <summary>It sat well: by the house rule a worst score of 0 to 2.</summary>
    Pass,

    /// <summary>Some trouble: by the house rule a worst score of 3 or 4.</summary>
    Adapt,

    /// <summary>Worst score 5 or more, vomiting, a stop, or a warning sign.</summary>
    Fail,
}

/// <summary>Own rule: the worst score against two lines; after vomiting, a stop or a warning sign a trial fails.</summary>
public static class TrialVerdicts
{
    /// <summary>The verdict on what a client told.</summary>
    /// <param name="feedback">What she told.</param>
    /// <param name="thresholds">Which scores pass and fail.</param>
    public static TrialVerdict Of(Feedback feedback, SymptomThresholds thresholds)
    {
        ArgumentNullException.ThrowIfNull(feedback);
        ArgumentNullException.ThrowIfNull(thresholds);
        var stopped = feedback.Vomited || feedback.Run is { StoppedByGut: true };
        if (stopped || !feedback.WarningSigns.IsEmpty)
            return TrialVerdict.Fail;
        return OfPeak(feedback.Symptoms.Select(s => s.Score).DefaultIfEmpty().Max(), thresholds);
    }

    /// <summary>The verdict on a worst score, 0 to 10.</summary>
    public static TrialVerdict OfPeak(int peak, SymptomThresholds thresholds)
    {
        ArgumentNullException.ThrowIfNull(thresholds);
        return peak >= thresholds.FailFrom ? TrialVerdict.Fail
            : peak > thresholds.PassUpTo ? TrialVerdict.Adapt
            : TrialVerdict.Pass;
    }
}
