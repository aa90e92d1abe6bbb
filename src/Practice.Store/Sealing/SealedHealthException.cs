namespace Practice.Store.Sealing;

/// <summary>
/// A sealed health fact does not open: its key is lost, or the row was tampered with. Work on the record stops here.
/// </summary>
public sealed class SealedHealthException : Exception
{
    internal SealedHealthException(SealedPlace place, string why, Exception? cause = null)
        : base(
            $"The health answers in {place} cannot be opened, and nothing is assumed in their place. {why} "
                + "Restore the table data_protection_key, and the certificate of Keys__Certificate where one is set; "
                + "see 'Keys' in docs/operations.md.",
            cause
        ) { }
}
