namespace Practice.TestSupport.Attack;

/// <summary>Secrets of phone links as somebody would try them who has seen one.</summary>
internal static class AlteredSecret
{
    private const string Letters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

    /// <returns>Never the secret itself.</returns>
    public static string Of(string secret, Random dice)
    {
        var place = dice.Next(secret.Length);
        var altered = dice.Next(8) switch
        {
            0 => With(secret, place, Letters[dice.Next(Letters.Length)]),
            // the last character has bits to spare
            1 => With(secret, secret.Length - 1, Letters[dice.Next(Letters.Length)]),
            2 => secret[..place],
            3 => secret + "=",
            4 => secret.ToUpperInvariant(),
            5 => secret[place..] + secret[..place],
            6 => Convert.ToHexStringLower(
                System.Security.Cryptography.SHA256.HashData(
                    System.Buffers.Text.Base64Url.DecodeFromChars(secret)
                )
            ),
            _ => new string(dice.GetItems<char>(Letters, secret.Length)),
        };
        return altered.Length == 0 || altered == secret ? new string('A', secret.Length) : altered;
    }

    private static string With(string text, int place, char letter) =>
        text[..place] + letter + text[(place + 1)..];
}
