using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Store.Documents;
using Practice.Store.Sealing;

namespace Practice.Store.Rehearsals;

internal sealed class RehearsalMapping
    : IEntityTypeConfiguration<Rehearsal>,
        IEntityTypeConfiguration<RehearsalBackground>
{
    public void Configure(EntityTypeBuilder<Rehearsal> builder)
    {
        builder.ToTable("rehearsal");
        builder.HasTenantKey(r => r.PracticeId, r => r.Id);
        builder.HasVersion();
        builder.Property(r => r.Kind).HasConversion<string>().HasMaxLength(20);
        builder.Property(r => r.Status).HasConversion<string>().HasMaxLength(20);
        builder.IsSealed(r => r.Details);
        builder.IsSealed(r => r.Plan);
        builder.IsSealed(r => r.Feedback);
        builder.IsSealed(r => r.Decision);
        builder.IsSealed(r => r.CancelledBecause);
        builder.HasIndex(r => new { r.PracticeId, r.RaceId });
        builder.HasIndex(r => new { r.PracticeId, r.ClientId });
        builder.HasOne<Client>().WithMany().HasForeignKey(r => new { r.PracticeId, r.ClientId });
        builder.HasOne<Race>().WithMany().HasForeignKey(r => new { r.PracticeId, r.RaceId });
    }

    public void Configure(EntityTypeBuilder<RehearsalBackground> builder)
    {
        builder.ToTable("rehearsal_background");
        builder.HasTenantKey(b => b.PracticeId, b => b.ClientId);
        builder.HasVersion();
        builder.Property(b => b.LongRuns).IsDocument();
        builder.IsSealed(b => b.Blocked);
        builder.IsSealed(b => b.Gut);
        builder
            .HasOne<Client>()
            .WithOne()
            .HasForeignKey<RehearsalBackground>(b => new { b.PracticeId, b.ClientId });
    }
}
