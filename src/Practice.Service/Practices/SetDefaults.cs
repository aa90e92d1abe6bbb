using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Practices;

namespace Practice.Service.Practices;

/// <summary>Sets what the practice's plans begin with, and how long it keeps what is quiet.</summary>
public sealed class SetDefaults(PracticeStore practices, PracticeCalendar calendar)
{
    /// <exception cref="ArgumentException">A value is outside its range; the message says which.</exception>
    public Task<SaveOutcome<PracticeProfile>> Run(
        Desk desk,
        OnFile<PracticeProfile> practice,
        PracticeDefaults defaults,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(defaults);
        var changed = practice.Value with
        {
            PracticeId = desk.PracticeId,
            Defaults = defaults.Checked(),
        };
        return practices.Save(
            practice with
            {
                Value = changed,
            },
            desk.Note("defaults-set", desk.PracticeId, calendar.Now),
            cancel
        );
    }
}
