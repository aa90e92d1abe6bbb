using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Store.Documents;

namespace Practice.Store.Rehearsals;

internal sealed class RehearsalMapping
    : IEntityTypeConfiguration<Rehearsal>,
        IEntityTypeConfiguration<RehearsalBackground>
{
    /// <summary>How much is tried, read out of the document by the database: lists need no document.</summary>
    public const string Kind = "Kind";

    /// <summary>Whether the feedback tells of a warning sign, read out of the document by the database.</summary>
    public const string Warns = "Warns";

    public void Configure(EntityTypeBuilder<Rehearsal> builder)
    {
        builder.ToTable("rehearsal");
        builder.HasTenantKey(r => r.PracticeId, r => r.Id);
        builder.HasVersion();
        builder.Property(r => r.Status).HasConversion<string>().HasMaxLength(20);
        builder.Property(r => r.Details).IsDocument();
        builder.Property(r => r.Plan).IsDocument();
        builder.Property(r => r.Feedback).IsDocument();
        builder.Property(r => r.Decision).IsDocument();
        builder
            .Property<RehearsalKind>(Kind)
            .HasConversion<string>()
            .HasComputedColumnSql("details ->> 'kind'", stored: true);
        builder
            .Property<bool>(Warns)
            .HasComputedColumnSql(
                "coalesce(jsonb_array_length(feedback -> 'warningSigns') > 0, false)",
                stored: true
            );
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
        builder.Property(b => b.Blocked).IsDocument();
        builder.Property(b => b.Gut).IsDocument();
        builder
            .HasOne<Client>()
            .WithOne()
            .HasForeignKey<RehearsalBackground>(b => new { b.PracticeId, b.ClientId });
    }
}
