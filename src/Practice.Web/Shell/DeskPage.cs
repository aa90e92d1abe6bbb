using Microsoft.AspNetCore.Components;
using Practice.Service.Desks;

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

    /// <summary>Cancelled when the page is left; what comes back late may still ask.</summary>
    protected CancellationToken Leaving { get; }

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
