using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Races;

namespace Practice.Store.Portal;

internal sealed class PhoneLinkMapping : IEntityTypeConfiguration<PhoneLink>
{
    public void Configure(EntityTypeBuilder<PhoneLink> builder)
    {
        builder.ToTable("phone_link");
        builder.HasTenantKey(l => l.PracticeId, l => l.Id);
        builder.HasVersion();
        builder.Property(l => l.Fingerprint).HasMaxLength(64);
        builder.Property(l => l.GivenBy).HasMaxLength(200);
        builder.HasIndex(l => l.Fingerprint);
        builder.HasIndex(l => new { l.PracticeId, l.RaceId });
        builder.HasOne<Client>().WithMany().HasForeignKey(l => new { l.PracticeId, l.ClientId });
        builder.HasOne<Race>().WithMany().HasForeignKey(l => new { l.PracticeId, l.RaceId });
    }
}
