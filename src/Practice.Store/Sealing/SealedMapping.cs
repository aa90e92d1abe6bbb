using System.Linq.Expressions;
using System.Reflection;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Practice.Store.Sealing;

/// <summary>Says of a property that it is a health fact.</summary>
internal static class SealedMapping
{
    /// <summary>The database gets the property as a sealed document and never in plain words.</summary>
    public static void IsSealed<T, TValue>(
        this EntityTypeBuilder<T> builder,
        Expression<Func<T, TValue>> property
    )
        where T : class
    {
        var fact = (PropertyInfo)((MemberExpression)property.Body).Member;
        builder.Ignore(fact.Name);
        builder
            .Property<byte[]>(SealedColumn.Prefix + fact.Name)
            .IsRequired(
                new NullabilityInfoContext().Create(fact).ReadState == NullabilityState.NotNull
            );
    }
}
