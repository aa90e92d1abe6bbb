using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Races;
using Practice.Store.Documents;

namespace Practice.Store.Races;

internal sealed class RaceMapping : IEntityTypeConfiguration<Race>
{
    public void Configure(EntityTypeBuilder<Race> builder)
    {
        builder.ToTable("race");
        builder.HasTenantKey(r => r.PracticeId, r => r.Id);
        builder.HasVersion();
        builder.Property(r => r.Name).HasMaxLength(200);
        builder.Property(r => r.Place).HasMaxLength(200);
        builder.Property(r => r.Discipline).HasConversion<string>().HasMaxLength(20);
        builder.Property(r => r.DistanceKm).HasPrecision(7, 3);
        builder.Property(r => r.ZoneId).HasMaxLength(64);
        builder.Property(r => r.Weather).IsDocument();
        builder.HasIndex(r => new { r.PracticeId, r.ClientId });
        builder.HasIndex(r => new { r.PracticeId, r.Start });
        builder.HasOne<Client>().WithMany().HasForeignKey(r => new { r.PracticeId, r.ClientId });
    }
}
