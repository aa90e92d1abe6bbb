using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Screening;
using Practice.Store.Sealing;

namespace Practice.Store.Screening;

internal sealed class ScreeningMapping : IEntityTypeConfiguration<ScreeningRecord>
{
    public void Configure(EntityTypeBuilder<ScreeningRecord> builder)
    {
        builder.ToTable("screening");
        builder.HasTenantKey(s => s.PracticeId, s => s.Id);
        builder.HasVersion();
        builder.IsSealed(s => s.Answers);
        builder.IsSealed(s => s.Clearances);
        builder.HasIndex(s => new { s.PracticeId, s.ClientId }).IsUnique();
        builder.HasOne<Client>().WithMany().HasForeignKey(s => new { s.PracticeId, s.ClientId });
    }
}
