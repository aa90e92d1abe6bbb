using System.Data.Common;
using System.Security.Cryptography;
using System.Text;

namespace Practice.Service.Hosting;

/// <summary>
/// What whoever founds the practice must know: it stands in the log, so that on a server that strangers reach only
/// somebody who runs it can be first. It is derived from the database's password, so all replicas say the same one and
/// nothing is kept; once there is a practice it opens nothing.
/// </summary>
public sealed class SetUpCode
{
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const int Length = 16;

    private SetUpCode(string text) => Text = text;

    /// <summary>The code as it is printed, in groups of four.</summary>
    public string Text { get; }

    internal static SetUpCode Of(RunningDatabase database)
    {
        var connection = new DbConnectionStringBuilder
        {
            ConnectionString = database.ConnectionString,
        };
        var mac = HMACSHA256.HashData(
            Encoding.UTF8.GetBytes(connection["Password"].ToString()!),
            "practice set-up code"u8
        );
        var code = new StringBuilder();
        for (var i = 0; i < Length; i++)
            code.Append(i > 0 && i % 4 == 0 ? "-" : "").Append(Letters[mac[i] % Letters.Length]);
        return new SetUpCode(code.ToString());
    }

    /// <summary>Whether somebody knows it; takes the same time for every wrong one.</summary>
    public bool Is(string? typed) =>
        CryptographicOperations.FixedTimeEquals(
            Encoding.UTF8.GetBytes(Plain(typed ?? "")),
            Encoding.UTF8.GetBytes(Plain(Text))
        );

    private static string Plain(string code) =>
        code.Replace("-", "", StringComparison.Ordinal).Trim().ToLowerInvariant();
}
