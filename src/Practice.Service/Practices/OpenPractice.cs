using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Practices;

namespace Practice.Service.Practices;

/// <summary>Opens the practice's own face: name, accent, logo, footer.</summary>
public sealed class OpenPractice(PracticeStore practices)
{
    /// <exception cref="InvalidOperationException">The desk belongs to no practice on file.</exception>
    public async Task<PracticeProfile> Run(Desk desk, CancellationToken cancel) =>
        (await practices.Find(desk.PracticeId, cancel))?.Value
        ?? throw new InvalidOperationException("The practice is not on file.");
}
