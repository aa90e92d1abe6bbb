using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Store.Documents;
using Practice.Store.Sealing;

namespace Practice.Store.Clients;

internal sealed class ClientMapping : IEntityTypeConfiguration<Client>
{
    /// <summary>Name and address in plain words, kept by the database for searching.</summary>
    public const string Words = "Words";

    public void Configure(EntityTypeBuilder<Client> builder)
    {
        builder.ToTable("client");
        builder.HasTenantKey(c => c.PracticeId, c => c.Id);
        builder.HasVersion();
        builder.Property(c => c.GivenName).HasMaxLength(100);
        builder.Property(c => c.FamilyName).HasMaxLength(100);
        builder.Property(c => c.Email).HasMaxLength(320);
        builder.Property(c => c.Units).HasConversion<string>().HasMaxLength(20);
        builder.IsSealed(c => c.Physique);
        builder.IsSealed(c => c.Diet);
        builder.IsSealed(c => c.Tastes);
        builder.IsSealed(c => c.BodyMassLog);
        builder.Property(c => c.ZoneId).HasMaxLength(64);
        builder.IsSealed(c => c.SweatLog);
        builder.IsSealed(c => c.Notes);
        builder.Property(c => c.Consents).IsDocument();
        builder.Property(c => c.LegalHold).IsDocument();
        builder
            .Property<string>(Words)
            .HasComputedColumnSql(
                "plain_words(given_name || ' ' || family_name || ' ' || coalesce(email, ''))",
                stored: true
            );
        builder.HasIndex(c => new { c.PracticeId, c.ResponsibleId });
        builder.HasOne<PracticeProfile>().WithMany().HasForeignKey(c => c.PracticeId);
    }
}
