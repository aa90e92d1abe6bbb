using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;
using Practice.Domain.Practices;
using Practice.Service.Hosting;
using Practice.Store.Mail;

namespace Practice.Service.Mail;

/// <summary>
/// Hands a letter to the practice's mail server; where none is set and a folder is, puts it there as a file.
/// </summary>
public sealed class Carrier(LetterSeal seal, PracticeSettings settings)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    internal async Task<SendResult> Carry(
        Letter letter,
        MailServer? server,
        CancellationToken cancel
    )
    {
        var from = server?.From ?? "practice@localhost";
        using var message = Message(letter, seal.Open(letter.Sealed), from);
        if (server is not null)
            return await Hand(message, server, cancel);
        if (settings.MailFolder is not { } folder)
            return SendResult.NoServer;
        Directory.CreateDirectory(folder);
        var file = Path.Combine(folder, $"{letter.Id}.eml");
        // under its own name only when it is whole: somebody may be reading the folder
        await message.WriteToAsync(file + ".part", cancel);
        File.Move(file + ".part", file, overwrite: true);
        return SendResult.Sent;
    }

    private static MimeMessage Message(Letter letter, LetterContent content, string from)
    {
        var body = new BodyBuilder
        {
            TextBody = LetterPaper.Plain(content),
            HtmlBody = LetterPaper.Html(content),
        };
        foreach (var (name, mediaType, file) in content.Enclosures)
            body.Attachments.Add(name, file, ContentType.Parse(mediaType));
        return new MimeMessage(
            [MailboxAddress.Parse(from)],
            [MailboxAddress.Parse(letter.To)],
            letter.Subject,
            body.ToMessageBody()
        )
        {
            Date = letter.WrittenAt.ToDateTimeOffset(),
            // the same for each try, so that a letter sent twice can be known as one
            MessageId = $"{letter.Id}@{MailboxAddress.Parse(from).Domain}",
        };
    }

    private async Task<SendResult> Hand(
        MimeMessage message,
        MailServer server,
        CancellationToken cancel
    )
    {
        using var client = new SmtpClient { Timeout = (int)Patience.TotalMilliseconds };
        try
        {
            await client.ConnectAsync(server.Host, server.Port, Security(server.Security), cancel);
            if (server.User.Length > 0)
                await client.AuthenticateAsync(
                    server.User,
                    seal.OpenPassword(server.SealedPassword),
                    cancel
                );
            await client.SendAsync(message, cancel);
            await client.DisconnectAsync(quit: true, cancel);
            return SendResult.Sent;
        }
        catch (Exception e)
            when (e
                    is SocketException
                        or IOException
                        or TimeoutException
                        or AuthenticationException
                        or SslHandshakeException
                        or ProtocolException
                        or CommandException
                        or ServiceNotConnectedException
                        or NotSupportedException
            )
        {
            return new SendResult(Problem(e));
        }
    }

    private static SecureSocketOptions Security(MailSecurity security) =>
        security switch
        {
            MailSecurity.Tls => SecureSocketOptions.SslOnConnect,
            MailSecurity.Open => SecureSocketOptions.None,
            _ => SecureSocketOptions.StartTls,
        };

    private static string Problem(Exception e) =>
        e switch
        {
            AuthenticationException => "The mail server does not take the name and password.",
            SslHandshakeException =>
                "The mail server's certificate is not trusted, or it wants another kind of security.",
            NotSupportedException =>
                "The mail server does not offer STARTTLS. Take another kind of security.",
            SocketException or TimeoutException =>
                $"The mail server does not answer ({e.Message}).",
            _ => $"The mail server said: {e.Message}",
        };
}
