namespace Practice.Service.Plans;

/// <summary>
/// Where the planner works: on threads of its own, so that a menu never takes a thread that a screen waits for, and
/// no more menus at once than the machine has cores.
/// </summary>
public sealed class Stove : IDisposable
{
    // two at the least: what is made behind the screens must not keep the practitioner waiting
    private readonly SemaphoreSlim _places = new(Math.Max(2, Environment.ProcessorCount));

    /// <summary>Runs work that keeps a core busy. The work itself watches for cancelling and keeps what it has.</summary>
    public async Task<T> Run<T>(Func<T> work)
    {
        await _places.WaitAsync();
        try
        {
            return await Task.Factory.StartNew(
                work,
                CancellationToken.None,
                TaskCreationOptions.LongRunning,
                TaskScheduler.Default
            );
        }
        finally
        {
            _places.Release();
        }
    }

    /// <inheritdoc cref="Run{T}(Func{T})" />
    public Task Run(Action work) =>
        Run(() =>
        {
            work();
            return true;
        });

    public void Dispose() => _places.Dispose();
}
