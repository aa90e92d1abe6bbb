using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Accounts;
using Practice.TestSupport;
using Practice.TestSupport.Attack;

namespace Practice.E2E.Tests.Attacks;

/// <summary>The application on a real port with two practices: one is attacked out of the other.</summary>
public sealed partial class AttackedApp(PostgresServer server) : AppFixture(server)
{
    private const string Password = "late frost on the orchard";
    private int _places;

    protected override bool IsDemo => false;

    protected override bool HasBrowser => false;

    internal Task<string> Digest(Victim victim) =>
        PracticeRows.DigestAsync(
            Services.GetRequiredService<NpgsqlDataSource>(),
            victim.Desk.PracticeId
        );

    /// <summary>Somebody at a network address of her own: how often one may ask is counted by address.</summary>
    public HttpClient Stranger()
    {
        var place = Interlocked.Increment(ref _places);
        var here = new IPEndPoint(
            new IPAddress([127, 1, (byte)(place / 250), (byte)(1 + place % 250)]),
            0
        );
        return new HttpClient(
            new SocketsHttpHandler
            {
                AllowAutoRedirect = false,
                UseCookies = true,
                ConnectCallback = async (context, cancel) =>
                {
                    var socket = new Socket(SocketType.Stream, ProtocolType.Tcp);
                    socket.Bind(here);
                    await socket.ConnectAsync(IPAddress.Loopback, context.DnsEndPoint.Port, cancel);
                    return new NetworkStream(socket, ownsSocket: true);
                },
            }
        )
        {
            BaseAddress = ClientOptions.BaseAddress,
        };
    }

    /// <summary>Somebody of the desk's practice, signed in.</summary>
    internal async Task<HttpClient> SignedIn(Desk desk)
    {
        var email = $"{desk.PracticeId:N}@attack.example";
        await using (var scope = Services.CreateAsyncScope())
        {
            var made = await scope
                .ServiceProvider.GetRequiredService<UserManager<Account>>()
                .CreateAsync(
                    new Account
                    {
                        Id = desk.AccountId,
                        PracticeId = desk.PracticeId,
                        UserName = email,
                        Email = email,
                        EmailConfirmed = true,
                        DisplayName = desk.Name,
                        Role = StaffRole.Owner,
                    },
                    Password
                );
            Assert.True(made.Succeeded, $"{made}");
        }

        var somebody = Stranger();
        var form = await somebody.GetStringAsync(new Uri("/sign-in", UriKind.Relative));
        using var answers = new FormUrlEncodedContent(
            new Dictionary<string, string>
            {
                ["_handler"] = "sign-in",
                ["__RequestVerificationToken"] = AntiforgeryWord().Match(form).Groups[1].Value,
                ["Form.Email"] = email,
                ["Form.Password"] = Password,
            }
        );
        using var entered = await somebody.PostAsync(
            new Uri("/sign-in", UriKind.Relative),
            answers
        );
        Assert.Equal(HttpStatusCode.Redirect, entered.StatusCode);
        return somebody;
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex AntiforgeryWord();
}
