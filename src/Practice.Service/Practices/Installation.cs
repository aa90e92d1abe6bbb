using Practice.Store.Practices;

namespace Practice.Service.Practices;

/// <summary>Whether anybody works here yet.</summary>
public sealed class Installation(PracticeStore practices)
{
    private bool _isFounded;

    /// <summary>Whether a practice lives here; asked of the database until one does.</summary>
    public async ValueTask<bool> IsFounded(CancellationToken cancel) =>
        _isFounded || (_isFounded = await practices.AnyYet(cancel));
}
