using System.Collections.Concurrent;
using System.Net;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Practice.Service.Portal;
using Practice.TestSupport.Attack;

namespace Practice.E2E.Tests.Attacks;

/// <summary>Attacks keep the machine busy: they wait until whoever looks through a browser is done.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class AttackCollection
{
    public const string Name = "attacks";
}

/// <summary>Requests at a real port with forged keys and altered phone links. Nothing may be told, and nothing changed.</summary>
[Collection(AttackCollection.Name)]
public sealed class ForgedRequestsTests(AttackedApp app) : IClassFixture<AttackedApp>
{
    private const int AtTheDesk = 1500;
    private const int WithAlteredLinks = 2500;
    private const int WithOtherLinks = 600;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Somebody_signed_in_for_another_practice_gets_nothing_by_a_key()
    {
        var victim = await Taken("Okonjo");
        var routes = Addresses.OfTheDesk(app.Services);
        Assert.Contains(routes, r => r.RawText!.EndsWith("/export.zip", StringComparison.Ordinal));
        Assert.Contains(routes, r => r.RawText!.EndsWith("/paper", StringComparison.Ordinal));
        using var own = await app.SignedIn(victim.Desk);
        var across = await Victim.FoundPractice(app.Services, "Across the road");
        using var attacker = await app.SignedIn(across);

        // every address tells its own practice something for one of the keys: so it would tell
        var silent = new List<string>();
        foreach (var route in routes)
        {
            var told = 0;
            foreach (var key in victim.Keys)
                told += await Tells(own, route.With(_ => $"{key}"), victim) ? 1 : 0;
            if (told == 0)
                silent.Add(route.RawText!);
        }
        Assert.Empty(silent);

        var before = await app.Digest(victim);
        var leaks = new ConcurrentBag<string>();
        await Parallel.ForAsync(
            0,
            AtTheDesk,
            new ParallelOptions { MaxDegreeOfParallelism = 4, CancellationToken = Cancel },
            async (attempt, _) =>
            {
                var dice = new Random(attempt);
                var address = routes[attempt % routes.Length]
                    .With(_ => Spelt(dice.GetItems(victim.Keys, 1)[0], dice));
                if (await Tells(attacker, address, victim))
                    leaks.Add(address);
            }
        );
        Assert.Empty(leaks);
        Assert.Equal(before, await app.Digest(victim));
    }

    [Fact]
    public async Task An_altered_phone_link_opens_nothing()
    {
        var victim = await Taken("Adeyemi");
        var routes = Addresses.OfThePhone(app.Services);
        using (var phone = app.Stranger())
            Assert.True(await Tells(phone, PhonePaths.Home(victim.Secret), victim));

        // as many links and addresses as it takes never to be asked to wait
        var links = await Links(victim, 10);
        HttpClient[] strangers = [.. links.Select(_ => app.Stranger())];
        var before = await app.Digest(victim);
        var opened = new ConcurrentBag<string>();
        await Parallel.ForAsync(
            0,
            WithAlteredLinks,
            new ParallelOptions { MaxDegreeOfParallelism = 4, CancellationToken = Cancel },
            async (attempt, _) =>
            {
                var dice = new Random(attempt);
                var secret = AlteredSecret.Of(links[attempt % links.Length], dice);
                var address = routes[dice.Next(routes.Length)]
                    .With(name => name == "secret" ? secret : $"{victim.RehearsalId}");
                using var answer = await Ask(
                    strangers[attempt % links.Length],
                    address,
                    dice.Next(2) == 0
                );
                if (answer.StatusCode != HttpStatusCode.NotFound && !IsAtTheDoor(answer))
                    opened.Add($"{answer.StatusCode} {address}");
            }
        );
        Assert.Empty(opened);
        Assert.Equal(before, await app.Digest(victim));
    }

    [Fact]
    public async Task A_link_of_one_client_neither_shows_nor_takes_a_log_of_another()
    {
        var victim = await Taken("Castellano");
        // one of the same practice, and one from across the road
        var beside = await Victim.TakeIn(app.Services, victim.Desk, "Prowler");
        var across = await Taken("Lurker");
        string[] links = [.. await Links(beside, 6), .. await Links(across, 6)];
        using (var phone = app.Stranger())
            Assert.True(await Tells(phone, Log(beside.Secret, beside.RehearsalId), beside));

        var before = await app.Digest(victim);
        var opened = new ConcurrentBag<string>();
        HttpClient[] strangers = [.. links.Select(_ => app.Stranger())];
        await Parallel.ForAsync(
            0,
            WithOtherLinks,
            new ParallelOptions { MaxDegreeOfParallelism = 4, CancellationToken = Cancel },
            async (attempt, _) =>
            {
                var dice = new Random(attempt);
                var link = attempt % links.Length;
                var address = Log(links[link], dice.GetItems(victim.Keys, 1)[0]);
                using var answer = await Ask(strangers[link], address, dice.Next(2) == 0);
                if (answer.StatusCode is not HttpStatusCode.NotFound)
                    opened.Add($"{answer.StatusCode} {address}");
            }
        );
        Assert.Empty(opened);
        Assert.Equal(before, await app.Digest(victim));
    }

    private async Task<Victim> Taken(string mark) =>
        await Victim.TakeIn(
            app.Services,
            await Victim.FoundPractice(app.Services, "Up the hill"),
            mark
        );

    private async Task<string[]> Links(Victim client, int count)
    {
        var give = app.Services.GetRequiredService<GiveLink>();
        var links = new List<string>();
        for (var i = 0; i < count; i++)
            links.Add((await give.Run(client.Desk, client.RaceId, Cancel))!.Path.Split('/')[^1]);
        return [.. links];
    }

    private static string Log(string secret, Guid rehearsalId) =>
        $"{PhonePaths.Home(secret)}/rehearsals/{rehearsalId}";

    /// <summary>A key in one of the spellings that a route takes for one.</summary>
    private static string Spelt(Guid key, Random dice) =>
        dice.Next(3) switch
        {
            0 => $"{key}".ToUpperInvariant(),
            1 => $"{key:N}",
            _ => $"{key}",
        };

    /// <summary>Whether an answer holds anything of the victim: her name on a page, or any file.</summary>
    private static async Task<bool> Tells(HttpClient asker, string address, Victim victim)
    {
        using var answer = await asker.GetAsync(new Uri(address, UriKind.Relative), Cancel);
        Assert.NotEqual(HttpStatusCode.TooManyRequests, answer.StatusCode);
        Assert.NotEqual(HttpStatusCode.InternalServerError, answer.StatusCode);
        if (answer.Content.Headers.ContentType?.MediaType != "text/html")
            return answer.IsSuccessStatusCode;
        var page = await answer.Content.ReadAsStringAsync(Cancel);
        return page.Contains(victim.Mark, StringComparison.Ordinal);
    }

    /// <summary>Sent to sign in: what is posted where nothing is taken ends there.</summary>
    private static bool IsAtTheDoor(HttpResponseMessage answer) =>
        answer.Headers.Location?.OriginalString.Contains("/sign-in?", StringComparison.Ordinal)
        ?? false;

    /// <summary>Looks, or sends a log that would be taken from the right link.</summary>
    private static async Task<HttpResponseMessage> Ask(
        HttpClient asker,
        string address,
        bool isPost
    )
    {
        using var form = new FormUrlEncodedContent(
            new Dictionary<string, string> { ["key"] = $"{Guid.NewGuid()}", ["note"] = "forged" }
        );
        var uri = new Uri(address, UriKind.Relative);
        var answer = isPost
            ? await asker.PostAsync(uri, form, Cancel)
            : await asker.GetAsync(uri, Cancel);
        Assert.NotEqual(HttpStatusCode.TooManyRequests, answer.StatusCode);
        return answer;
    }
}
