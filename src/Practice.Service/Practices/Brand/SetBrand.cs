using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Practices;

namespace Practice.Service.Practices.Brand;

/// <summary>Sets the face that the practice shows its clients.</summary>
public sealed class SetBrand(PracticeStore practices, PracticeCalendar calendar)
{
    /// <summary>The practice with its version, to change it.</summary>
    public async Task<OnFile<PracticeProfile>?> Open(Desk desk, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        return await practices.Find(desk.PracticeId, cancel);
    }

    /// <param name="desk">Who acts.</param>
    /// <param name="practice">The practice as it was read.</param>
    /// <param name="details">Its new face.</param>
    /// <param name="logo">Its logo from the press; empty for none.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="ArgumentException">A line cannot be kept; the message says which.</exception>
    public async Task<SaveOutcome<PracticeProfile>> Run(
        Desk desk,
        OnFile<PracticeProfile> practice,
        BrandDetails details,
        ImmutableArray<byte> logo,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(details);
        var changed = details.ApplyTo(practice.Value) with
        {
            PracticeId = desk.PracticeId,
            LogoPng = logo,
        };
        return await practices.Save(
            practice with
            {
                Value = changed,
            },
            desk.Note("brand-set", desk.PracticeId, calendar.Now),
            cancel
        );
    }
}
