using Practice.Store.Accounts;

namespace Practice.Service.Accounts;

/// <summary>The page on which whoever brings the token chooses a new password.</summary>
internal static class ResetLink
{
    public static string Of(Account account, string token) =>
        $"reset?who={account.Id}&token={Uri.EscapeDataString(token)}";
}
