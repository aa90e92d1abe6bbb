namespace Practice.Service.Desks;

/// <summary>Somebody asked for a task that her role has not. No screen offers it: the address was typed or forged.</summary>
public sealed class NotAllowedException : Exception
{
    private NotAllowedException()
        : base("This is not in your role. Ask the owner of the practice.") { }

    /// <exception cref="NotAllowedException">It is not allowed.</exception>
    internal static void Unless(bool allowed)
    {
        if (!allowed)
            throw new NotAllowedException();
    }
}
