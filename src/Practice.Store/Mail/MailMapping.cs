using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Mail;

internal sealed class MailMapping
    : IEntityTypeConfiguration<Letter>,
        IEntityTypeConfiguration<LetterDue>,
        IEntityTypeConfiguration<MailServer>
{
    public void Configure(EntityTypeBuilder<Letter> builder)
    {
        builder.ToTable("letter");
        builder.HasTenantKey(l => l.PracticeId, l => l.Id);
        builder.Property(l => l.Kind).HasConversion<string>().HasMaxLength(20);
        builder.Property(l => l.To).HasMaxLength(320);
        builder.Property(l => l.Subject).HasMaxLength(200);
        builder.Property(l => l.WrittenBy).HasMaxLength(200);
        builder.Property(l => l.Problem).HasMaxLength(500);
        IsBytes(builder.Property(l => l.Sealed));
        builder.HasOne<PracticeProfile>().WithMany().HasForeignKey(l => l.PracticeId);
        builder
            .HasOne<Client>()
            .WithMany()
            .HasForeignKey(l => new { l.PracticeId, l.ClientId })
            .OnDelete(DeleteBehavior.Cascade);
        builder
            .HasOne<Rehearsal>()
            .WithMany()
            .HasForeignKey(l => new { l.PracticeId, l.RehearsalId })
            .OnDelete(DeleteBehavior.Cascade);
        // whoever sends, and however many at once: of a rehearsal on a day the same is said once
        builder
            .HasIndex(l => new
            {
                l.PracticeId,
                l.RehearsalId,
                l.RunOn,
                l.Kind,
            })
            .IsUnique()
            .HasFilter("given_up_at is null");
    }

    public void Configure(EntityTypeBuilder<LetterDue> builder)
    {
        builder.ToTable("letter_due");
        builder.HasKey(d => d.LetterId);
        builder.Property(d => d.LetterId).ValueGeneratedNever();
        builder.HasIndex(d => d.DueAt);
    }

    public void Configure(EntityTypeBuilder<MailServer> builder)
    {
        builder.ToTable("mail_server");
        builder.HasKey(m => m.PracticeId);
        builder.HasVersion();
        builder.Property(m => m.PracticeId).ValueGeneratedNever();
        builder.Property(m => m.Host).HasMaxLength(255);
        builder.Property(m => m.Security).HasConversion<string>().HasMaxLength(20);
        builder.Property(m => m.User).HasMaxLength(320);
        builder.Property(m => m.From).HasMaxLength(320);
        IsBytes(builder.Property(m => m.SealedPassword));
        builder.HasOne<PracticeProfile>().WithOne().HasForeignKey<MailServer>(m => m.PracticeId);
    }

    private static void IsBytes(PropertyBuilder<ImmutableArray<byte>> property) =>
        property.HasConversion(
            value => ImmutableCollectionsMarshal.AsArray(value)!,
            bytes => ImmutableCollectionsMarshal.AsImmutableArray(bytes),
            new ValueComparer<ImmutableArray<byte>>(
                (a, b) => Enumerable.SequenceEqual(a, b),
                value => value.Length
            )
        );
}
