using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Practices;

namespace Practice.Store.Accounts;

/// <summary>Accounts keep a key of their own: sign-in finds them before it knows their practice.</summary>
internal sealed class AccountMapping
    : IEntityTypeConfiguration<Account>,
        IEntityTypeConfiguration<IdentityUserClaim<Guid>>,
        IEntityTypeConfiguration<IdentityUserLogin<Guid>>,
        IEntityTypeConfiguration<IdentityUserToken<Guid>>,
        IEntityTypeConfiguration<IdentityUserPasskey<Guid>>
{
    public void Configure(EntityTypeBuilder<Account> builder)
    {
        builder.ToTable("account");
        builder.Property(a => a.DisplayName).HasMaxLength(200);
        builder.Property(a => a.Role).HasConversion<string>().HasMaxLength(20);
        builder.HasIndex(a => a.PracticeId);
        builder.HasIndex(a => a.NormalizedUserName).HasDatabaseName("ix_account_user_name");
        builder.HasIndex(a => a.NormalizedEmail).HasDatabaseName("ix_account_email");
        builder.HasOne<PracticeProfile>().WithMany().HasForeignKey(a => a.PracticeId);
    }

    // Identity names these tables itself, so the naming convention leaves them
    public void Configure(EntityTypeBuilder<IdentityUserClaim<Guid>> builder) =>
        builder.ToTable("account_claim");

    public void Configure(EntityTypeBuilder<IdentityUserLogin<Guid>> builder) =>
        builder.ToTable("account_login");

    public void Configure(EntityTypeBuilder<IdentityUserToken<Guid>> builder) =>
        builder.ToTable("account_token");

    public void Configure(EntityTypeBuilder<IdentityUserPasskey<Guid>> builder) =>
        builder.ToTable("account_passkey");
}
