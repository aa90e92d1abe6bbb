using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Practice.Store.Sealing;

/// <summary>
/// Opens sealed columns when a row becomes a domain object, and closes them when it is saved. The stores and the domain
/// see plain facts only; the database sees sealed ones only.
/// </summary>
internal sealed class SealedDocuments : SaveChangesInterceptor, IMaterializationInterceptor
{
    /// <summary>One for all contexts: EF keeps a model for each instance. The keys come with the context.</summary>
    public static SealedDocuments Interceptor { get; } = new();

    public object InitializedInstance(MaterializationInterceptionData data, object entity)
    {
        foreach (var sealedColumn in SealedColumn.Of(data.EntityType))
        {
            var closed = data.GetPropertyValue<byte[]?>(sealedColumn.Column);
            if (closed is null && sealedColumn.Column.IsNullable)
                continue;
            var place = sealedColumn.In(
                data.GetPropertyValue<Guid>(sealedColumn.Practice),
                data.GetPropertyValue<Guid>(sealedColumn.Row)
            );
            var type = sealedColumn.Property.PropertyType;
            sealedColumn.Property.SetValue(
                entity,
                ((PracticeDb)data.Context).Health.Open(closed, type, place)
            );
        }

        return entity;
    }

    public override InterceptionResult<int> SavingChanges(
        DbContextEventData eventData,
        InterceptionResult<int> result
    )
    {
        CloseAll(eventData.Context!);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData,
        InterceptionResult<int> result,
        CancellationToken cancellationToken = default
    )
    {
        CloseAll(eventData.Context!);
        return ValueTask.FromResult(result);
    }

    private static void CloseAll(DbContext db)
    {
        foreach (var entry in db.ChangeTracker.Entries())
            if (entry.State is EntityState.Added or EntityState.Modified)
                foreach (var sealedColumn in SealedColumn.Of(entry.Metadata))
                    Close(entry, sealedColumn);
    }

    private static void Close(EntityEntry entry, SealedColumn sealedColumn)
    {
        var place = sealedColumn.In(
            (Guid)entry.CurrentValues[sealedColumn.Practice]!,
            (Guid)entry.CurrentValues[sealedColumn.Row]!
        );
        var closed = entry.Property(sealedColumn.Column);
        closed.CurrentValue = sealedColumn.Property.GetValue(entry.Entity) is { } fact
            ? ((PracticeDb)entry.Context).Health.Close(
                fact,
                sealedColumn.Property.PropertyType,
                place
            )
            : null;
        // of a row that was read by another context EF knows no earlier value, and would take "nothing" for unchanged
        closed.IsModified = entry.State == EntityState.Modified;
    }
}
