using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.DataProtection;

namespace Practice.Service.Mail;

/// <summary>
/// Seals what a letter says while it waits, and the password of the mail server. The keys are those that sign cookies:
/// every replica has them, and a reader of the two tables alone has not.
/// </summary>
public sealed class LetterSeal(IDataProtectionProvider keys)
{
    private readonly IDataProtector _letters = keys.CreateProtector("practice.letter");
    private readonly IDataProtector _passwords = keys.CreateProtector("practice.mail-password");

    internal ImmutableArray<byte> Seal(LetterContent letter) =>
        ImmutableCollectionsMarshal.AsImmutableArray(
            _letters.Protect(JsonSerializer.SerializeToUtf8Bytes(letter))
        );

    internal LetterContent Open(ImmutableArray<byte> sealedLetter) =>
        JsonSerializer.Deserialize<LetterContent>(
            _letters.Unprotect(ImmutableCollectionsMarshal.AsArray(sealedLetter)!)
        )!;

    internal ImmutableArray<byte> SealPassword(string password) =>
        password.Length == 0
            ? []
            : ImmutableCollectionsMarshal.AsImmutableArray(
                _passwords.Protect(Encoding.UTF8.GetBytes(password))
            );

    internal string OpenPassword(ImmutableArray<byte> sealedPassword) =>
        sealedPassword.IsEmpty
            ? ""
            : Encoding.UTF8.GetString(
                _passwords.Unprotect(ImmutableCollectionsMarshal.AsArray(sealedPassword)!)
            );
}
