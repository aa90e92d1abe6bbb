using Microsoft.AspNetCore.Components;
using MudBlazor;
using Practice.Service.Desks;
using Practice.Web.Parts.Saving;

namespace Practice.Web.Shell;

/// <summary>A page of the practice's team: knows who acts, and stops its work when it is left.</summary>
public abstract class DeskPage : ComponentBase, IDisposable
{
    private readonly CancellationTokenSource leaving = new();

    /// <summary>A page of the practice's team.</summary>
    protected DeskPage() => Leaving = leaving.Token;

    /// <summary>Who acts.</summary>
    [CascadingParameter]
    protected Desk Desk { get; set; } = null!;

    /// <summary>Whether what was typed is being sent.</summary>
    protected bool IsSending { get; private set; }

    [Inject]
    private ISnackbar Told { get; set; } = null!;

    /// <summary>Cancelled when the page is left; what comes back late may still ask.</summary>
    protected CancellationToken Leaving { get; }

    /// <summary>
    /// Sends what was typed. Asked to once more meanwhile, it does not send it twice; where the database is away it says so,
    /// and the page stays as it is.
    /// </summary>
    /// <param name="send">
    /// Tells whether the page stays. One that leads on is busy to its end: a hurried second press must not send again.
    /// </param>
    protected async Task Send(Func<Task<bool>> send)
    {
        ArgumentNullException.ThrowIfNull(send);
        if (IsSending)
            return;
        var stays = true;
        IsSending = true;
        try
        {
            stays = await send();
        }
        catch (Exception e) when (Outage.IsBehind(e))
        {
            Told.Add(Outage.Words, Severity.Error);
        }
        finally
        {
            IsSending = !stays;
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Stops what the page still does.</summary>
    protected virtual void Dispose(bool disposing)
    {
        if (!disposing)
            return;
        leaving.Cancel();
        leaving.Dispose();
    }
}
