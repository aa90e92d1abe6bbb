using Practice.Service.Plans;
using Practice.Service.Portal;
using Practice.TestSupport;

namespace Practice.Store.Tests.Portal;

public class FollowCalendarTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Task<string?> Follow(string secret) =>
        practice.Get<FollowCalendar>().Run(secret, Cancel);

    [Fact]
    public async Task The_link_that_opens_the_phone_pages_carries_the_plan_as_a_calendar_once_it_is_out()
    {
        var client = await practice.NewClient();
        var race = await practice.NewRace(client);
        var draft = await practice.NewDraft(race);
        var link = await practice.Get<GiveLink>().Run(practice.Practitioner, race, Cancel);
        var secret = link!.Path[(PhonePaths.Root.Length + 1)..];
        Assert.DoesNotContain("VEVENT", await Follow(secret), StringComparison.Ordinal);

        Assert.IsType<Issued>(
            await practice.Get<IssuePlan>().Run(practice.Practitioner, draft.Version, Cancel)
        );

        var calendar = await Follow(secret);
        Assert.Contains("TZID=Europe/London:20270418T090000", calendar, StringComparison.Ordinal);
        Assert.Contains($"race.{race:N}@practice", calendar, StringComparison.Ordinal);

        await practice.Get<RevokeLink>().Run(practice.Practitioner, link.Link.Id, Cancel);
        Assert.Null(await Follow(secret));
    }

    [Fact]
    public async Task A_secret_that_never_was_follows_nothing() =>
        Assert.Null(await Follow("no-such-secret"));
}
