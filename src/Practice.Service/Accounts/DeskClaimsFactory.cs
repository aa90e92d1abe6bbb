using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using Practice.Service.Desks;
using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>Puts the desk into the cookie, so that no page asks the database who is there.</summary>
internal sealed class DeskClaimsFactory(
    UserManager<Account> accounts,
    IOptions<IdentityOptions> options
) : UserClaimsPrincipalFactory<Account>(accounts, options)
{
    protected override async Task<ClaimsIdentity> GenerateClaimsAsync(Account user)
    {
        var identity = await base.GenerateClaimsAsync(user);
        identity.AddClaim(new Claim(DeskClaims.PracticeId, user.PracticeId.ToString()));
        identity.AddClaim(new Claim(DeskClaims.DisplayName, user.DisplayName));
        identity.AddClaim(new Claim(DeskClaims.Role, user.Role.ToString()));
        return identity;
    }
}
