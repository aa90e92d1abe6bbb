using System.ComponentModel.DataAnnotations;
using Practice.Domain.Practices;
using Practice.Service.Mail;
using Practice.Web.Parts;

namespace Practice.Web.Features.Settings.Mail;

/// <summary>What is typed about the mail server.</summary>
public sealed class MailForm
{
    [Required(ErrorMessage = "Type the server's name.")]
    [StringLength(255, ErrorMessage = "A server's name has at most 255 characters.")]
    [NoControlCharacters]
    public string? Host { get; set; }

    [Required(ErrorMessage = "Type the port.")]
    [Range(1, 65535, ErrorMessage = "A port is between 1 and 65535.")]
    public int? Port { get; set; } = 587;

    public MailSecurity Security { get; set; }

    [StringLength(320, ErrorMessage = "A name has at most 320 characters.")]
    [NoControlCharacters]
    public string? User { get; set; }

    [StringLength(500, ErrorMessage = "A password has at most 500 characters.")]
    public string? Password { get; set; }

    [Required(ErrorMessage = "Type the address that letters come from.")]
    [EmailAddress(ErrorMessage = "That is not an e-mail address.")]
    [StringLength(254, ErrorMessage = "An address has at most 254 characters.")]
    [NoControlCharacters]
    public string? From { get; set; }

    public static MailForm Of(MailServer? server) =>
        server is null
            ? new MailForm()
            : new MailForm
            {
                Host = server.Host,
                Port = server.Port,
                Security = server.Security,
                User = server.User,
                From = server.From,
            };

    public MailServerDetails Read() =>
        new(
            Host!,
            Port!.Value,
            Security,
            User ?? "",
            string.IsNullOrEmpty(Password) ? null : Password,
            From!
        );
}
