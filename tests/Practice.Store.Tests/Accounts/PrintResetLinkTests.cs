using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Practice.Domain.Practices;
using Practice.Service.Accounts;
using Practice.Service.Audit;
using Practice.Store.Accounts;
using Practice.TestSupport;

namespace Practice.Store.Tests.Accounts;

public class PrintResetLinkTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const string Before = "plum jam on the shelf";
    private const string After = "quince jelly on the shelf";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_link_sets_a_password_once_and_the_practice_reads_that_it_was_made()
    {
        var account = await Member("owner@larch.example");

        var link = await Print(account.Email!);

        Assert.StartsWith("/reset?who=", link, StringComparison.Ordinal);
        var token = Uri.UnescapeDataString(link!.Split("token=")[1]);
        Assert.Null(await Reset(account, token));
        Assert.NotNull(await Reset(account, token));
        await using var scope = practice.Services.CreateAsyncScope();
        var accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        var now = await accounts.FindByIdAsync($"{account.Id}");
        Assert.True(await accounts.CheckPasswordAsync(now!, After));

        var owner = practice.Practitioner with { Role = StaffRole.Owner };
        var lines = await practice
            .Get<ReadAudit>()
            .Run(owner, new AuditQuestion(About: account.Id), 0, Cancel);
        Assert.Equal(
            ["password-reset", "password-reset-link-made"],
            lines.Lines.Select(l => l.What)
        );
    }

    [Fact]
    public async Task Nobody_gets_a_link_who_has_no_account_or_left()
    {
        var account = await Member("left@larch.example", TestPractice.Now);
        Assert.Null(await Print(account.Email!));
        Assert.Null(await Print("stranger@larch.example"));
    }

    private async Task<Account> Member(string email, NodaTime.Instant? left = null)
    {
        var account = new Account
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practice.Practitioner.PracticeId,
            UserName = email,
            Email = email,
            DisplayName = "Ora Nge",
            Role = StaffRole.Owner,
            DeactivatedAt = left,
        };
        await using var scope = practice.Services.CreateAsyncScope();
        var made = await scope
            .ServiceProvider.GetRequiredService<UserManager<Account>>()
            .CreateAsync(account, Before);
        Assert.True(made.Succeeded, $"{made}");
        return account;
    }

    private async Task<string?> Print(string email)
    {
        await using var scope = practice.Services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<PrintResetLink>().Run(email, Cancel);
    }

    private async Task<string?> Reset(Account account, string token)
    {
        await using var scope = practice.Services.CreateAsyncScope();
        return await scope
            .ServiceProvider.GetRequiredService<ResetPassword>()
            .Run(account.Id, token, After, "", Cancel);
    }
}
