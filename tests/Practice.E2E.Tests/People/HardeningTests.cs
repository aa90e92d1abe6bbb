using System.Net;
using System.Text.RegularExpressions;
using Practice.E2E.Tests.Browsing;
using static Microsoft.Playwright.Assertions;
using static Practice.E2E.Tests.People.Owner;

namespace Practice.E2E.Tests.People;

/// <summary>What strangers get to see, and how often.</summary>
public sealed partial class HardeningTests(FreshApp app) : IClassFixture<FreshApp>
{
    [Fact]
    public async Task Only_scripts_that_the_page_names_run_in_it_and_nobody_frames_it()
    {
        using var stranger = Stranger();
        var nonces = new HashSet<string>();
        foreach (var _ in new[] { 1, 2 })
        {
            using var answer = await stranger.GetAsync("/begin", Cancel);
            var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
            var nonce = NonceOf().Match(policy).Groups[1].Value;
            nonces.Add(nonce);
            Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
            var scripts = Script().Matches(await answer.Content.ReadAsStringAsync(Cancel));
            Assert.NotEmpty(scripts);
            Assert.All(
                scripts,
                s =>
                {
                    Assert.Contains(
                        $"nonce=\"{nonce}\"",
                        s.Groups[1].Value,
                        StringComparison.Ordinal
                    );
                    Assert.Contains("src=", s.Groups[1].Value, StringComparison.Ordinal);
                    Assert.Empty(s.Groups[2].Value.Trim());
                }
            );
            Assert.Equal("DENY", answer.Headers.GetValues("X-Frame-Options").Single());
            Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
            Assert.True(answer.Headers.CacheControl?.NoStore);
            Assert.Empty(answer.Headers.Server);
        }
        Assert.Equal(2, nonces.Count);
    }

    [Fact]
    public async Task What_no_form_of_ours_sent_is_refused()
    {
        using var stranger = Stranger();
        foreach (var address in new[] { "/passkeys/sign-in", "/sign-in", "/forgot", "/begin" })
        {
            using var form = new FormUrlEncodedContent(
                new Dictionary<string, string> { ["_handler"] = "sign-in" }
            );
            using var answer = await stranger.PostAsync(address, form, Cancel);
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_known_address_is_refused_in_the_same_words_as_an_unknown_one()
    {
        await using (await Comes(app, Look.Desktop)) { }
        var words = new HashSet<string>();
        foreach (var email in new[] { Email, "nobody@lindenhof.example" })
        {
            await using var visit = await app.Stranger(Look.Desktop);
            await visit.Go("/sign-in");
            await SignIn(visit.Page, email, "wrong horse staple");
            var alert = visit.Page.Locator(".refusal");
            await Expect(alert).ToBeVisibleAsync();
            words.Add(await alert.InnerTextAsync());
        }
        Assert.Single(words);
    }

    private HttpClient Stranger() => new() { BaseAddress = app.ClientOptions.BaseAddress };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [GeneratedRegex("'nonce-([^']+)'")]
    private static partial Regex NonceOf();

    [GeneratedRegex("<script([^>]*)>(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex Script();
}

/// <summary>Knocking without end, at a door of its own.</summary>
public sealed class KnockingTests(FreshApp app) : IClassFixture<FreshApp>
{
    [Fact]
    public async Task Who_knocks_too_often_waits()
    {
        using var stranger = new HttpClient { BaseAddress = app.ClientOptions.BaseAddress };
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < 60; i++)
        {
            using var form = new FormUrlEncodedContent([]);
            using var answer = await stranger.PostAsync(
                "/sign-in",
                form,
                TestContext.Current.CancellationToken
            );
            answers.Add(answer.StatusCode);
        }
        Assert.NotEqual(HttpStatusCode.TooManyRequests, answers[0]);
        Assert.Contains(HttpStatusCode.TooManyRequests, answers);
    }
}
