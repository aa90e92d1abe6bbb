using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>How a trial went for the gut.</summary>
public enum TrialVerdict
{
    /// <summary>Worst score 0 to 2.</summary>
    Pass,

    /// <summary>Worst score 3 or 4.</summary>
    Adapt,

    /// <summary>Worst score 5 or more, vomiting, a stop, or a warning sign.</summary>
    Fail,
}

/// <summary>Own rule: pass up to 2, adapt at 3 and 4, fail from 5 on, after vomiting or a stop.</summary>
public static class TrialVerdicts
{
    /// <summary>Where the rule comes from.</summary>
    public static Source Source => Sources.TrialVerdicts;

    /// <summary>The verdict on what a client told.</summary>
    public static TrialVerdict Of(Feedback feedback)
    {
        ArgumentNullException.ThrowIfNull(feedback);
        var stopped = feedback.Vomited || feedback.Run is { StoppedByGut: true };
        if (stopped || !feedback.WarningSigns.IsEmpty)
            return TrialVerdict.Fail;
        return OfPeak(feedback.Symptoms.Select(s => s.Score).DefaultIfEmpty().Max());
    }

    /// <summary>The verdict on a worst score, 0 to 10.</summary>
    public static TrialVerdict OfPeak(int peak) =>
        peak switch
        {
            <= 2 => TrialVerdict.Pass,
            < Symptom.SevereFrom => TrialVerdict.Adapt,
            _ => TrialVerdict.Fail,
        };
}
