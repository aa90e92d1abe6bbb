using System.ComponentModel.DataAnnotations;
using Practice.Web.Parts;

namespace Practice.Web.Features.Account.Begin;

/// <summary>What is typed to found a practice.</summary>
public sealed class BeginForm
{
    [Required(ErrorMessage = "Type the code from the log.")]
    [StringLength(40, ErrorMessage = "The code is shorter.")]
    public string? Code { get; set; }

    [Required(ErrorMessage = "Type the name of the practice.")]
    [StringLength(200, ErrorMessage = "A name has at most 200 characters.")]
    [NoControlCharacters]
    public string? Practice { get; set; }

    [Required(ErrorMessage = "Type your name.")]
    [StringLength(200, ErrorMessage = "A name has at most 200 characters.")]
    [NoControlCharacters]
    public string? Name { get; set; }

    [Required(ErrorMessage = "Type your e-mail address.")]
    [EmailAddress(ErrorMessage = "That is not an e-mail address.")]
    [StringLength(254, ErrorMessage = "An address has at most 254 characters.")]
    [NoControlCharacters]
    public string? Email { get; set; }

    [Required(ErrorMessage = "Choose a password.")]
    [StringLength(
        200,
        MinimumLength = 12,
        ErrorMessage = "Take 12 to 200 characters: three or four words do."
    )]
    public string? Password { get; set; }
}
