using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Debriefs;
using Practice.Domain.Races;
using Practice.Store.Sealing;

namespace Practice.Store.Debriefs;

internal sealed class DebriefMapping : IEntityTypeConfiguration<Debrief>
{
    public void Configure(EntityTypeBuilder<Debrief> builder)
    {
        builder.ToTable("race_debrief");
        builder.HasTenantKey(d => d.PracticeId, d => d.RaceId);
        builder.HasVersion();
        builder.IsSealed(d => d.Report);
        builder.Property(d => d.RecordedBy).HasMaxLength(200);
        builder.HasIndex(d => new { d.PracticeId, d.ClientId });
        builder
            .HasOne<Race>()
            .WithOne()
            .HasForeignKey<Debrief>(d => new { d.PracticeId, d.RaceId });
    }
}
