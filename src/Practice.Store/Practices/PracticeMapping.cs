using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Practices;
using Practice.Store.Documents;

namespace Practice.Store.Practices;

internal sealed class PracticeMapping
    : IEntityTypeConfiguration<PracticeProfile>,
        IEntityTypeConfiguration<RegisteredPractice>
{
    public void Configure(EntityTypeBuilder<PracticeProfile> builder)
    {
        builder.ToTable("practice");
        builder.HasKey(p => p.PracticeId);
        builder.Property(p => p.PracticeId).ValueGeneratedNever();
        builder.HasVersion();
        builder.Property(p => p.Name).HasMaxLength(200);
        builder.Property(p => p.Accent).HasMaxLength(7);
        builder.Property(p => p.Paper).HasConversion<string>().HasMaxLength(20);
        builder.Property(p => p.Units).HasConversion<string>().HasMaxLength(20);
        builder.Property(p => p.Defaults).IsDocument();
        builder
            .Property(p => p.LogoPng)
            .HasConversion(
                logo => ImmutableCollectionsMarshal.AsArray(logo)!,
                bytes => ImmutableCollectionsMarshal.AsImmutableArray(bytes),
                new ValueComparer<ImmutableArray<byte>>((a, b) => Same(a, b), logo => logo.Length)
            );
    }

    public void Configure(EntityTypeBuilder<RegisteredPractice> builder)
    {
        builder.ToTable("registered_practice");
        builder.Property(r => r.Id).ValueGeneratedNever();
        builder.HasOne<PracticeProfile>().WithOne().HasForeignKey<RegisteredPractice>(r => r.Id);
    }

    private static bool Same(ImmutableArray<byte> a, ImmutableArray<byte> b) => a.SequenceEqual(b);
}
