using Microsoft.AspNetCore.Identity;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>Signs out.</summary>
public sealed class SignOut(SignInManager<Account> manager)
{
    public Task Run() => manager.SignOutAsync();
}
