namespace Practice.Service.Hosting;

/// <summary>The first seconds of the program, in which somebody waits for the first page: other work lets it go first.</summary>
internal static class Opening
{
    private static readonly TimeSpan Length = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan ToSignIn = TimeSpan.FromSeconds(1);

    /// <summary>Waits until it is over, for work that begins when the program does.</summary>
    public static Task Over(CancellationToken cancel) => Task.Delay(Length, cancel);

    /// <summary>Waits until somebody who was waiting can sign in, for work that the page after it needs.</summary>
    public static Task CanSignIn(CancellationToken cancel) => Task.Delay(ToSignIn, cancel);
}
