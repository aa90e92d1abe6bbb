using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Store.Sealing;

namespace Practice.Store.Plans;

internal sealed class PlanMapping : IEntityTypeConfiguration<PlanVersion>
{
    public void Configure(EntityTypeBuilder<PlanVersion> builder)
    {
        builder.ToTable("plan_version");
        builder.HasTenantKey(p => p.PracticeId, p => p.Id);
        builder.HasVersion();
        builder.Property(p => p.Status).HasConversion<string>().HasMaxLength(20);
        builder.Property(p => p.IssuedBy).HasMaxLength(200);
        builder.IsSealed(p => p.Plan);
        builder
            .HasIndex(p => new
            {
                p.PracticeId,
                p.RaceId,
                p.Number,
            })
            .IsUnique();
        builder.HasOne<Race>().WithMany().HasForeignKey(p => new { p.PracticeId, p.RaceId });
    }
}
