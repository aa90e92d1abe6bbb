using Microsoft.EntityFrameworkCore;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Portal;
using Practice.Store.Audit;
using Practice.Store.Portal;
using Practice.TestSupport;

namespace Practice.Store.Tests.Portal;

public class PhoneLinkTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_link_opens_the_pages_of_its_client_and_race()
    {
        var booked = await BookedRehearsal.Make(practice);

        var phone = await practice.Get<OpenLink>().Run(booked.Secret, isOpening: true, Cancel);

        Assert.Equal("Harbour Marathon", phone!.RaceName);
        Assert.Equal("Ines", phone.GivenName);
        Assert.Equal(booked.Id, Assert.Single(phone.Rehearsals).Id);
        Assert.Null(phone.Plan); // a draft is nobody's to read
        Assert.True(phone.MayWeigh);
    }

    [Fact]
    public async Task An_address_holds_256_random_bits_and_the_database_only_their_fingerprint()
    {
        var booked = await BookedRehearsal.Make(practice);
        var another = await practice
            .Get<GiveLink>()
            .Run(practice.Practitioner, booked.RaceId, Cancel);

        Assert.Equal(43, booked.Secret.Length);
        Assert.NotEqual(booked.Link.Path, another!.Path);
        await using var db = practice
            .Get<IDbContextFactory<PracticeDb>>()
            .Open(practice.Practitioner.PracticeId);
        var rows = await db
            .Database.SqlQueryRaw<string>(
                "select row_to_json(l)::text as \"Value\" from phone_link l"
            )
            .ToListAsync(Cancel);
        Assert.NotEmpty(rows);
        Assert.DoesNotContain(rows, row => row.Contains(booked.Secret, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_assistant_may_give_and_revoke_and_a_revoked_link_opens_nothing()
    {
        var booked = await BookedRehearsal.Make(practice);
        var given = await practice.Get<GiveLink>().Run(practice.Assistant, booked.RaceId, Cancel);
        var secret = given!.Path[(PhonePaths.Root.Length + 1)..];
        Assert.NotNull(await practice.Get<OpenLink>().Run(secret, isOpening: true, Cancel));

        Assert.True(
            await practice.Get<RevokeLink>().Run(practice.Assistant, given.Link.Id, Cancel)
        );

        Assert.Null(await practice.Get<OpenLink>().Run(secret, isOpening: true, Cancel));
        Assert.NotNull(await practice.Get<OpenLink>().Run(booked.Secret, isOpening: true, Cancel));
        Assert.DoesNotContain(
            await practice.Get<LinksOfRace>().Run(practice.Practitioner, booked.RaceId, Cancel),
            l => l.Id == given.Link.Id
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("../../../../../../../../../../../../../../../")]
    public async Task What_is_no_secret_opens_nothing(string secret) =>
        Assert.Null(await practice.Get<OpenLink>().Run(secret, isOpening: true, Cancel));

    [Fact]
    public async Task A_link_ends_two_weeks_after_the_start_of_its_race()
    {
        var booked = await BookedRehearsal.Make(practice);
        var start = NodaTime.Instant.FromUtc(2027, 4, 18, 8, 0); // nine o'clock in London's summer

        Assert.True(booked.Link.Link.IsOpenAt(start + NodaTime.Duration.FromDays(13)));
        Assert.False(booked.Link.Link.IsOpenAt(start + NodaTime.Duration.FromDays(14)));
    }

    [Fact]
    public async Task The_first_opening_is_audited_and_every_opening_is_counted()
    {
        var booked = await BookedRehearsal.Make(practice);
        Assert.Null(booked.Link.Link.FirstUsedAt);

        await Task.WhenAll(
            Enumerable
                .Range(0, 5)
                .Select(_ => practice.Get<OpenLink>().Run(booked.Secret, isOpening: true, Cancel))
        );

        var link = Assert.Single(
            await practice.Get<LinksOfRace>().Run(practice.Practitioner, booked.RaceId, Cancel)
        );
        Assert.Equal(5, link.Uses);
        Assert.Equal(TestPractice.Now, link.FirstUsedAt);
        Assert.Equal(TestPractice.Now, link.LastUsedAt);
        var audit = await practice
            .Get<AuditLog>()
            .Latest(practice.Practitioner.PracticeId, booked.RaceId, 50, Cancel);
        var first = Assert.Single(audit, a => a.What == "phone-link-first-used");
        Assert.Null(first.AccountId);
    }

    [Fact]
    public async Task At_the_door_one_row_is_seen_by_its_fingerprint_and_no_other()
    {
        var booked = await BookedRehearsal.Make(practice);
        await BookedRehearsal.Make(practice);
        await using var stranger = await practice
            .Get<NpgsqlDataSource>()
            .OpenConnectionAsync(Cancel);
        Assert.Equal(0L, await Count(stranger));

        await using var say = new NpgsqlCommand(
            "select set_config('practice.door', $1, false)",
            stranger
        )
        {
            Parameters = { new() { Value = booked.Link.Link.Fingerprint } },
        };
        await say.ExecuteNonQueryAsync(Cancel);

        Assert.Equal(1L, await Count(stranger));
        await using var revoke = new NpgsqlCommand("update phone_link set uses = 0", stranger);
        Assert.Equal(0, await revoke.ExecuteNonQueryAsync(Cancel));
    }

    [Fact]
    public async Task Another_practice_can_neither_see_nor_revoke_a_link()
    {
        var booked = await BookedRehearsal.Make(practice);
        var stranger = await practice.FoundPractice("Next Door");

        Assert.Empty(await practice.Get<LinksOfRace>().Run(stranger, booked.RaceId, Cancel));
        Assert.Null(await practice.Get<GiveLink>().Run(stranger, booked.RaceId, Cancel));
        Assert.False(await practice.Get<RevokeLink>().Run(stranger, booked.Link.Link.Id, Cancel));
        Assert.NotNull(await practice.Get<OpenLink>().Run(booked.Secret, isOpening: true, Cancel));
    }

    [Fact]
    public async Task Whoever_is_to_see_no_numbers_finds_none_and_is_not_asked_for_weight()
    {
        var answers = Questionnaire.NothingToReport.With(
            EatingAndEnergy.EatingDisorder,
            EatingAndEnergy.InThePast
        );
        var booked = await BookedRehearsal.Make(practice, answers);

        var file = await booked.Open(practice);

        Assert.True(file!.Phone.IsNumberFree);
        Assert.False(file.Phone.MayWeigh);
        Assert.All(
            [
                file.Details.Breakfast!.What,
                file.Details.RunFuel!.What,
                .. file.Sittings.SelectMany(s => s.Portions).Select(p => p.Name),
            ],
            text => Assert.Empty(NumberFree.Violations(text))
        );
    }

    private static async Task<long> Count(NpgsqlConnection connection)
    {
        await using var count = new NpgsqlCommand("select count(*) from phone_link", connection);
        return (long)(await count.ExecuteScalarAsync(Cancel))!;
    }
}
