using Practice.Domain.Plans;

namespace Practice.Service.Plans;

/// <summary>Stops a build as soon as every sitting has something on the plate.</summary>
internal sealed class UntilComplete(CancellationTokenSource enough) : IProgress<MenuProgress>
{
    public void Report(MenuProgress value)
    {
        if (value.Days is not null)
            enough.Cancel();
    }
}
