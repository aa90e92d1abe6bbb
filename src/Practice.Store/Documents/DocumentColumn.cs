using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Practice.Store.Documents;

/// <summary>A value object as one JSON document in one column.</summary>
internal static class DocumentColumn
{
    public static void IsDocument<T>(this PropertyBuilder<T> property) =>
        property
            .HasColumnType("jsonb")
            .HasConversion(
                value => StoredJson.Write(value),
                json => StoredJson.Read<T>(json),
                // documents are immutable: the same instance is the same content, and needs no copy to compare with
                new ValueComparer<T>(
                    (a, b) =>
                        ReferenceEquals(a, b)
                        || a != null && b != null && StoredJson.Write(a) == StoredJson.Write(b),
                    value => StoredJson.Write(value).GetHashCode(StringComparison.Ordinal),
                    value => value
                )
            );
}
