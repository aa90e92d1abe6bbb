using NodaTime;
using Practice.Domain.Caseload;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Parts.Saving;

/// <summary>
/// Keeps on file what is under a hand: when the hand has rested for a moment, so that a run of clicks is one save, and one
/// save at a time, so that a slow save never looks like somebody else's to the next.
/// </summary>
/// <param name="first">The thing as it was read.</param>
/// <param name="save">Hands what is under the hand back, as a change of what was read or saved last.</param>
/// <param name="clock">What the clock on the wall says.</param>
internal sealed class Autosave<T>(
    OnFile<T> first,
    Func<OnFile<T>, Task<SaveOutcome<T>>> save,
    Func<LocalTime> clock
)
    where T : class
{
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(700);
    private readonly Turns turns = new();
    private CancellationTokenSource? resting;
    private int changes;

    /// <summary>The thing as it was read or saved last.</summary>
    public OnFile<T> OnFile { get; private set; } = first;

    /// <summary>What somebody else saved meanwhile; null when nobody did.</summary>
    public OnFile<T>? Theirs { get; private set; }

    /// <summary>Whether the last change is on file.</summary>
    public SaveStanding Standing { get; private set; } = SaveStanding.Saved;

    /// <summary>When something was last saved here.</summary>
    public LocalTime? SavedAt { get; private set; }

    /// <summary>Saves once no further change has come for a moment, and at once when the page is left within it.</summary>
    public async Task Soon(CancellationToken leaving)
    {
        changes++;
        Standing = SaveStanding.Saving;
        var mine = CancellationTokenSource.CreateLinkedTokenSource(leaving);
        await Begin(mine);
        try
        {
            await Task.Delay(Rest, mine.Token);
        }
        catch (OperationCanceledException) when (!leaving.IsCancellationRequested)
        {
            return;
        }
        catch (OperationCanceledException)
        {
            // left within the moment: what was done must not be lost
        }
        await Run(save);
    }

    /// <summary>Saves now.</summary>
    public async Task Now()
    {
        await Begin(null);
        await Run(save);
    }

    /// <summary>Lets another task change what is on file, in turn with the saves.</summary>
    public Task Run(Func<OnFile<T>, Task<SaveOutcome<T>>> task) =>
        turns.Next(async () =>
        {
            try
            {
                Standing = SaveStanding.Saving;
                var asked = changes;
                Take(await task(OnFile), asked);
            }
            catch (Exception e) when (Outage.IsBehind(e))
            {
                Standing = SaveStanding.NotSaved;
            }
        });

    /// <summary>Goes on from what somebody else saved.</summary>
    public T TakeTheirs()
    {
        (OnFile, Theirs) = (Theirs!, null);
        return OnFile.Value;
    }

    /// <summary>Ends the rest that was, and only then lets another begin.</summary>
    private Task Begin(CancellationTokenSource? rest)
    {
        var earlier = resting;
        resting = rest;
        return earlier?.CancelAsync() ?? Task.CompletedTask;
    }

    private void Take(SaveOutcome<T> outcome, int asked)
    {
        switch (outcome)
        {
            case Saved<T> { Now: var now }:
                (OnFile, SavedAt) = (now, clock());
                // what changed while it was being saved waits for its own moment
                if (asked == changes)
                    Standing = SaveStanding.Saved;
                break;
            case Conflict<T> { Theirs: var there }:
                (Standing, Theirs) = (SaveStanding.NotSaved, there);
                break;
        }
    }
}
