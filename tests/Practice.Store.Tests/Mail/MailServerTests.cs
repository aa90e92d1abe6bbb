using System.Net;
using System.Net.Sockets;
using System.Text;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Mail;
using Practice.Store.Mail;
using Practice.TestSupport;

namespace Practice.Store.Tests.Mail;

/// <summary>A real conversation with a mail server, and what is kept of its password.</summary>
public sealed class MailServerTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private Desk Owner => practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task A_letter_reaches_the_server_with_both_forms_and_what_is_enclosed()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        var heard = Listen(listener);
        var port = ((IPEndPoint)listener.LocalEndpoint).Port;
        var content = new LetterContent(
            "Hello",
            ["Eat <rice> & honey."],
            new LetterLink("Open", "https://practice.example/x?a=1&b=2"),
            "The practice"
        )
        {
            Enclosures = [new Enclosure("plan.pdf", "application/pdf", [37, 80, 68, 70])],
        };
        var letter = practice
            .Get<LetterDesk>()
            .Write(Owner, LetterKind.Handout, "client@example.org", null, content);

        var result = await practice.Get<Carrier>().Carry(letter, Server(port), Cancel);

        Assert.Equal(SendResult.Sent, result);
        var said = await heard;
        Assert.Contains("RCPT TO:<client@example.org>", said, StringComparison.Ordinal);
        Assert.Contains("Subject: Hello", said, StringComparison.Ordinal);
        Assert.Contains("Eat <rice> & honey.", said, StringComparison.Ordinal);
        Assert.Contains("Eat &lt;rice&gt; &amp; honey.", said, StringComparison.Ordinal);
        Assert.Contains("plan.pdf", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_is_not_there_is_told_in_words()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        var port = ((IPEndPoint)listener.LocalEndpoint).Port;
        listener.Stop();
        var letter = practice
            .Get<LetterDesk>()
            .Write(
                Owner,
                LetterKind.Test,
                "a@example.org",
                null,
                new LetterContent("Hi", [], null, "We")
            );

        var result = await practice.Get<Carrier>().Carry(letter, Server(port), Cancel);

        Assert.Contains("does not answer", result.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_password_is_kept_sealed_and_goes_to_no_other_server()
    {
        var set = practice.Get<SetMailServer>();
        var details = new MailServerDetails(
            "smtp.example.org",
            587,
            MailSecurity.StartTls,
            "we",
            "very secret",
            "we@example.org"
        );
        await set.Run(Owner, details, Cancel);
        var kept = await practice.Get<MailServerStore>().Find(Owner.PracticeId, Cancel);
        Assert.NotEmpty(kept!.SealedPassword);
        Assert.DoesNotContain(
            "very secret",
            Encoding.Latin1.GetString(kept.SealedPassword.AsSpan()),
            StringComparison.Ordinal
        );

        await set.Run(Owner, details with { Password = null, Port = 465 }, Cancel);
        kept = await practice.Get<MailServerStore>().Find(Owner.PracticeId, Cancel);
        Assert.NotEmpty(kept!.SealedPassword);

        await set.Run(Owner, details with { Password = null, Host = "evil.example" }, Cancel);
        kept = await practice.Get<MailServerStore>().Find(Owner.PracticeId, Cancel);
        Assert.Empty(kept!.SealedPassword);
    }

    private MailServer Server(int port) =>
        new()
        {
            PracticeId = Owner.PracticeId,
            Host = "127.0.0.1",
            Port = port,
            Security = MailSecurity.Open,
            From = "we@example.org",
        };

    /// <summary>Just enough of RFC 5321 to take one letter.</summary>
    private static async Task<string> Listen(TcpListener listener)
    {
        using var client = await listener.AcceptTcpClientAsync(Cancel);
        await using var stream = client.GetStream();
        using var reader = new StreamReader(stream, Encoding.UTF8);
        await using var writer = new StreamWriter(stream, new UTF8Encoding(false))
        {
            NewLine = "\r\n",
            AutoFlush = true,
        };
        var heard = new StringBuilder();
        var inLetter = false;
        await writer.WriteLineAsync("220 here");
        while (await reader.ReadLineAsync(Cancel) is { } line)
        {
            heard.AppendLine(line);
            if (inLetter && line != ".")
                continue;
            inLetter = line.StartsWith("DATA", StringComparison.Ordinal);
            await writer.WriteLineAsync(
                inLetter ? "354 go on"
                : line.StartsWith("QUIT", StringComparison.Ordinal) ? "221 bye"
                : "250 fine"
            );
            if (line.StartsWith("QUIT", StringComparison.Ordinal))
                break;
        }
        return heard.ToString();
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}
