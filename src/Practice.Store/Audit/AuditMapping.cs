using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Practices;

namespace Practice.Store.Audit;

internal sealed class AuditMapping : IEntityTypeConfiguration<AuditEntry>
{
    public void Configure(EntityTypeBuilder<AuditEntry> builder)
    {
        builder.ToTable("audit_entry");
        builder.HasTenantKey(a => a.PracticeId, a => a.Id);
        builder.Property(a => a.By).HasMaxLength(200);
        builder.Property(a => a.What).HasMaxLength(100);
        builder.HasIndex(a => new { a.PracticeId, a.About });
        builder
            .HasOne<PracticeProfile>()
            .WithMany()
            .HasForeignKey(a => a.PracticeId)
            .OnDelete(DeleteBehavior.Restrict);
    }
}
