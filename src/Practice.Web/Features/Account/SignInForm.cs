using System.ComponentModel.DataAnnotations;

namespace Practice.Web.Features.Account;

/// <summary>What is typed to sign in.</summary>
public sealed class SignInForm
{
    [Required(ErrorMessage = "Type your e-mail address.")]
    [EmailAddress(ErrorMessage = "That is not an e-mail address.")]
    public string? Email { get; set; }

    [Required(ErrorMessage = "Type your password.")]
    public string? Password { get; set; }

    public bool Stay { get; set; }
}
