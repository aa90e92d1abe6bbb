using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Store.Sealing;

namespace Practice.Store.Audit;

internal sealed class AuditMapping
    : IEntityTypeConfiguration<AuditEntry>,
        IEntityTypeConfiguration<HealthChange>
{
    public void Configure(EntityTypeBuilder<AuditEntry> builder)
    {
        builder.ToTable("audit_entry");
        builder.HasTenantKey(a => a.PracticeId, a => a.Id);
        builder.Property(a => a.By).HasMaxLength(200);
        builder.Property(a => a.What).HasMaxLength(100);
        builder.Property(a => a.From).HasMaxLength(200);
        builder.HasIndex(a => new { a.PracticeId, a.About });
        builder
            .HasMany(a => a.Changes)
            .WithOne()
            .HasForeignKey(c => new { c.PracticeId, c.EntryId })
            .OnDelete(DeleteBehavior.Restrict);
        builder
            .HasOne<PracticeProfile>()
            .WithMany()
            .HasForeignKey(a => a.PracticeId)
            .OnDelete(DeleteBehavior.Restrict);
    }

    public void Configure(EntityTypeBuilder<HealthChange> builder)
    {
        builder.ToTable("health_change");
        builder.HasTenantKey(c => c.PracticeId, c => c.Id);
        builder.IsSealed(c => c.Field);
        builder.IsSealed(c => c.Was);
        builder.IsSealed(c => c.Became);
        builder.HasIndex(c => new { c.PracticeId, c.ClientId });
        // erasing a client takes the facts along and leaves the line
        builder.HasOne<Client>().WithMany().HasForeignKey(c => new { c.PracticeId, c.ClientId });
    }
}
