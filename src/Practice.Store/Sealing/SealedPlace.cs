namespace Practice.Store.Sealing;

/// <summary>
/// Where a sealed document stands. The place is part of its seal: moved into another row, column or practice it does
/// not open.
/// </summary>
/// <param name="Column">Table and column.</param>
/// <param name="PracticeId">The practice that owns the row.</param>
/// <param name="RowId">The rest of the row's key.</param>
internal readonly record struct SealedPlace(string Column, Guid PracticeId, Guid RowId)
{
    public override string ToString() => $"{Column} of row {RowId}";
}
