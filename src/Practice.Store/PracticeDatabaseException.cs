namespace Practice.Store;

/// <summary>The database cannot be had; the message says what to do about it.</summary>
public sealed class PracticeDatabaseException(string message, Exception? cause = null)
    : Exception(message, cause);
