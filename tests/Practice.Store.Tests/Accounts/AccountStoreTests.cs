using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Practice.Domain.Practices;
using Practice.Store.Accounts;
using Practice.Store.Practices;
using Practice.TestSupport;

namespace Practice.Store.Tests.Accounts;

/// <summary>Identity over row security, each step in a scope of its own as each request is.</summary>
public sealed class AccountStoreTests(TwoPractices practices)
    : IClassFixture<TwoPractices>,
        IAsyncDisposable
{
    private readonly ServiceProvider _services = Services(practices.Database);

    [Fact]
    public async Task An_account_is_found_by_name_address_and_key_before_its_practice_is_known()
    {
        var account = await CreateAsync(practices.Ours, "found@example.org");
        Assert.Equal(account.Id, (await As(m => m.FindByNameAsync("found@example.org")))?.Id);
        Assert.Equal(account.Id, (await As(m => m.FindByEmailAsync("found@example.org")))?.Id);
        Assert.Equal(account.Id, (await As(m => m.FindByIdAsync(account.Id.ToString())))?.Id);
        Assert.Null(await As(m => m.FindByNameAsync("nobody@example.org")));
        Assert.Null(await As(m => m.FindByIdAsync(Guid.NewGuid().ToString())));
    }

    [Fact]
    public async Task A_wrong_password_counts_and_a_right_one_forgets_the_count()
    {
        await CreateAsync(practices.Ours, "count@example.org");
        var failed = await As(async manager =>
        {
            var account = await manager.FindByNameAsync("count@example.org");
            Assert.False(await manager.CheckPasswordAsync(account!, "wrong"));
            Succeeded(await manager.AccessFailedAsync(account!));
            return account!;
        });
        Assert.Equal(1, failed.AccessFailedCount);
        var again = await As(async manager =>
        {
            var account = await manager.FindByNameAsync("count@example.org");
            Assert.Equal(1, account!.AccessFailedCount);
            Assert.True(await manager.CheckPasswordAsync(account, Password));
            Succeeded(await manager.ResetAccessFailedCountAsync(account));
            return account;
        });
        Assert.Equal(0, again.AccessFailedCount);
    }

    [Fact]
    public async Task Two_practices_cannot_have_the_same_sign_in_name()
    {
        await CreateAsync(practices.Ours, "taken@example.org");
        var result = await As(m =>
            m.CreateAsync(New(practices.Theirs, "taken@example.org"), Password)
        );
        Assert.Equal("DuplicateUserName", Assert.Single(result.Errors).Code);
    }

    [Fact]
    public async Task Claims_tokens_and_passkeys_of_an_account_can_be_kept_and_read()
    {
        await CreateAsync(practices.Theirs, "keys@example.org");
        byte[] credential = [1, 2, 3, 250];
        await As(async manager =>
        {
            var account = (await manager.FindByNameAsync("keys@example.org"))!;
            Succeeded(await manager.AddClaimAsync(account, new Claim("colour", "green")));
            Succeeded(await manager.SetAuthenticationTokenAsync(account, "own", "kind", "value"));
            Succeeded(await manager.AddOrUpdatePasskeyAsync(account, Passkey(credential)));
            return 0;
        });

        await As(async manager =>
        {
            var account = await manager.FindByPasskeyIdAsync(credential);
            Assert.Equal("keys@example.org", account?.UserName);
            Assert.Equal("green", Assert.Single(await manager.GetClaimsAsync(account!)).Value);
            Assert.Equal(
                "value",
                await manager.GetAuthenticationTokenAsync(account!, "own", "kind")
            );
            Assert.Single(await manager.GetPasskeysAsync(account!));
            Succeeded(await manager.RemovePasskeyAsync(account!, credential));
            return 0;
        });
        Assert.Null(await As(m => m.FindByPasskeyIdAsync(credential)));
    }

    [Fact]
    public async Task A_team_is_the_practices_own()
    {
        var account = await CreateAsync(practices.Ours, "team@example.org");
        var store = practices.Database.Get<PracticeStore>();
        var cancel = TestContext.Current.CancellationToken;
        Assert.Contains(
            await store.Team(practices.Ours.PracticeId, cancel),
            member => member == new TeamMember(account.Id, "Team", account.Email!, StaffRole.Owner)
        );
        Assert.DoesNotContain(
            await store.Team(practices.Theirs.PracticeId, cancel),
            member => member.AccountId == account.Id
        );
    }

    private const string Password = "correct horse battery staple";

    private async Task<Account> CreateAsync(PracticeProfile practice, string email)
    {
        var account = New(practice, email);
        Succeeded(await As(m => m.CreateAsync(account, Password)));
        return account;
    }

    private static Account New(PracticeProfile practice, string email) =>
        new()
        {
            PracticeId = practice.PracticeId,
            UserName = email,
            Email = email,
            DisplayName = "Team",
            Role = StaffRole.Owner,
        };

    private static UserPasskeyInfo Passkey(byte[] credential) =>
        new(
            credential,
            [9],
            Sample.Now.ToDateTimeOffset(),
            0,
            ["internal"],
            true,
            true,
            true,
            [],
            []
        )
        {
            Name = "A phone",
        };

    private async Task<T> As<T>(Func<UserManager<Account>, Task<T>> act)
    {
        await using var scope = _services.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<UserManager<Account>>());
    }

    private static void Succeeded(IdentityResult result) =>
        Assert.True(result.Succeeded, string.Join(' ', result.Errors.Select(e => e.Description)));

    private static ServiceProvider Services(TestDatabase database)
    {
        var services = new ServiceCollection().AddLogging();
        services.AddPracticeStore(ApplicationConnection(database));
        services
            .AddIdentityCore<Account>(o =>
            {
                o.Password.RequireDigit = false;
                o.Password.RequireUppercase = false;
                o.Password.RequireNonAlphanumeric = false;
            })
            .AddDefaultTokenProviders();
        return services.BuildServiceProvider();
    }

    private static string ApplicationConnection(TestDatabase database) =>
        Store.RowSecurity.ApplicationRole.ConnectionFor(database.OwnerConnection);

    public ValueTask DisposeAsync() => _services.DisposeAsync();
}
