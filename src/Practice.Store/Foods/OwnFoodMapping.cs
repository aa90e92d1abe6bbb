using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Foods.Own;
using Practice.Domain.Practices;
using Practice.Store.Documents;

namespace Practice.Store.Foods;

internal sealed class OwnFoodMapping
    : IEntityTypeConfiguration<OwnFood>,
        IEntityTypeConfiguration<OwnMeasure>
{
    public void Configure(EntityTypeBuilder<OwnFood> builder)
    {
        builder.ToTable("own_food");
        builder.HasTenantKey(f => f.PracticeId, f => f.Id);
        builder.HasVersion();
        builder.Property(f => f.Sheet).IsDocument();
        builder.Property(f => f.NameKey).HasMaxLength(200);
        builder.Ignore(f => f.Food);
        builder.Ignore(f => f.FoodId);
        builder
            .HasIndex(f => new { f.PracticeId, f.NameKey })
            .IsUnique()
            .HasFilter("retired_at is null");
        builder.HasOne<PracticeProfile>().WithMany().HasForeignKey(f => f.PracticeId);
    }

    public void Configure(EntityTypeBuilder<OwnMeasure> builder)
    {
        builder.ToTable("own_measure");
        builder.HasTenantKey(m => m.PracticeId, m => m.Id);
        builder.HasVersion();
        builder.Property(m => m.FoodId).HasMaxLength(100);
        builder.Property(m => m.Name).HasMaxLength(40);
        builder.Property(m => m.Plural).HasMaxLength(40);
        builder.Ignore(m => m.Measure);
        builder
            .HasIndex(m => new
            {
                m.PracticeId,
                m.FoodId,
                m.Name,
            })
            .IsUnique();
        builder.HasOne<PracticeProfile>().WithMany().HasForeignKey(m => m.PracticeId);
    }
}
