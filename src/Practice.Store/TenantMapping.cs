using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Practice.Store;

/// <summary>What every table of a practice has in common.</summary>
internal static class TenantMapping
{
    /// <summary>The column PostgreSQL itself keeps: the transaction that last wrote the row.</summary>
    public const string Version = "Version";

    /// <summary>The practice comes first in the key, so that a table can be distributed by it.</summary>
    public static void HasTenantKey<T>(
        this EntityTypeBuilder<T> builder,
        Expression<Func<T, Guid>> practice,
        Expression<Func<T, Guid>> id
    )
        where T : class
    {
        builder.Property(practice);
        builder.Property(id).ValueGeneratedNever();
        builder.HasKey(NameOf(practice), NameOf(id));
    }

    public static void HasVersion<T>(this EntityTypeBuilder<T> builder)
        where T : class => builder.Property<uint>(Version).IsRowVersion();

    private static string NameOf<T>(Expression<Func<T, Guid>> property) =>
        ((MemberExpression)property.Body).Member.Name;
}
