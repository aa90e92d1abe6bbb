using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Practice.Store.Sealing;

/// <summary>A key of the installation: every replica reads the same.</summary>
internal sealed class ProtectionKey
{
    public int Id { get; private init; }

    public string? FriendlyName { get; private init; }

    public required string Xml { get; set; }
}

/// <summary>Kept in <c>data_protection_key</c>.</summary>
internal sealed class ProtectionKeyMapping : IEntityTypeConfiguration<ProtectionKey>
{
    public void Configure(EntityTypeBuilder<ProtectionKey> builder) =>
        builder.ToTable("data_protection_key").Property(key => key.Xml).IsRequired(false);
}
