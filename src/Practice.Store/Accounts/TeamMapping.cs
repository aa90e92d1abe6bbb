using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Practices;

namespace Practice.Store.Accounts;

internal sealed class TeamMapping
    : IEntityTypeConfiguration<Invitation>,
        IEntityTypeConfiguration<SignInSession>
{
    public void Configure(EntityTypeBuilder<Invitation> builder)
    {
        builder.ToTable("invitation");
        builder.HasTenantKey(i => i.PracticeId, i => i.Id);
        builder.HasVersion();
        builder.Property(i => i.Email).HasMaxLength(320);
        builder.Property(i => i.Role).HasConversion<string>().HasMaxLength(20);
        builder.Property(i => i.SecretHash).HasMaxLength(64);
        builder.Property(i => i.InvitedBy).HasMaxLength(200);
        builder.HasIndex(i => i.SecretHash);
        builder.HasOne<PracticeProfile>().WithMany().HasForeignKey(i => i.PracticeId);
    }

    public void Configure(EntityTypeBuilder<SignInSession> builder)
    {
        builder.ToTable("account_session");
        builder.HasTenantKey(s => s.PracticeId, s => s.Id);
        builder.Property(s => s.From).HasMaxLength(200);
        builder.HasIndex(s => new { s.PracticeId, s.AccountId });
        builder.HasOne<Account>().WithMany().HasForeignKey(s => s.AccountId);
    }
}
