using System.ComponentModel.DataAnnotations;
using Practice.Web.Parts;

namespace Practice.Web.Features.Account.Join;

/// <summary>What is typed to take a seat.</summary>
public sealed class JoinForm
{
    [Required(ErrorMessage = "Type your name.")]
    [StringLength(200, ErrorMessage = "A name has at most 200 characters.")]
    [NoControlCharacters]
    public string? Name { get; set; }

    [Required(ErrorMessage = "Choose a password.")]
    [StringLength(
        200,
        MinimumLength = 12,
        ErrorMessage = "Take 12 to 200 characters: three or four words do."
    )]
    public string? Password { get; set; }
}
