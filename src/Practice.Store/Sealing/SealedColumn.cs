using System.Collections.Immutable;
using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Practice.Store.Sealing;

/// <summary>A property of a domain type that the database holds sealed, in a column of bytes named after it.</summary>
internal sealed class SealedColumn
{
    /// <summary>What the name of such a column begins with in the model; in the database it is <c>sealed_</c>.</summary>
    public const string Prefix = "Sealed";

    private SealedColumn(IProperty column)
    {
        Column = column;
        Property = column.DeclaringType.ClrType.GetProperty(column.Name[Prefix.Length..])!;
        (Practice, Row) = column.DeclaringType.ContainingEntityType.FindPrimaryKey()!.Properties
            is [var practice, var row]
            ? (practice, row)
            : throw new InvalidOperationException($"{column} lies in no row of a practice.");
        Table = column.DeclaringType.GetTableName()!;
        Name = column.GetColumnName();
    }

    /// <summary>The column as the model knows it.</summary>
    public IProperty Column { get; }

    /// <summary>What it holds.</summary>
    public PropertyInfo Property { get; }

    /// <summary>The first part of the row's key.</summary>
    public IProperty Practice { get; }

    /// <summary>The rest of the row's key.</summary>
    public IProperty Row { get; }

    public string Table { get; }

    public string Name { get; }

    /// <summary>The column of one property.</summary>
    public static SealedColumn Of<T>(DbContext db, string property) =>
        Of(db.Model.FindEntityType(typeof(T))!).Single(c => c.Property.Name == property);

    public SealedPlace In(Guid practiceId, Guid rowId) => new($"{Table}.{Name}", practiceId, rowId);

    /// <summary>The sealed columns of an entity; none for most.</summary>
    public static ImmutableArray<SealedColumn> Of(IEntityType entity) =>
        entity.GetOrAddRuntimeAnnotationValue(
            "Practice:Sealed",
            static type => Find(type!),
            entity
        );

    /// <summary>Opens what a query read of the column alone; null for nothing.</summary>
    public T? Open<T>(PracticeDb db, Guid rowId, byte[]? closed)
        where T : class =>
        closed is null ? null : (T)db.Health.Open(closed, typeof(T), In(db.Practice, rowId));

    private static ImmutableArray<SealedColumn> Find(IEntityType entity) =>
        [
            .. entity
                .GetProperties()
                .Where(p =>
                    p.IsShadowProperty() && p.Name.StartsWith(Prefix, StringComparison.Ordinal)
                )
                .Select(p => new SealedColumn(p)),
        ];
}
