using Npgsql;
using Practice.Service.Portal;
using Practice.Service.Races;
using Practice.TestSupport;
using Practice.TestSupport.Attack;

namespace Practice.Store.Tests.Service;

/// <summary>
/// Somebody of one practice who knows the keys of another, and even holds its files, tries every task with them. Nothing of
/// the other practice may change or be told.
/// </summary>
public sealed class ForgedKeysTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const int Attempts = 20_000;

    [Fact]
    public async Task Twenty_thousand_forged_calls_change_and_tell_nothing_of_another_practice()
    {
        var cancel = TestContext.Current.CancellationToken;
        var victim = await Victim.TakeIn(practice.Services, practice.Practitioner, "Okonjo");
        var across = await Victim.FoundPractice(practice.Services, "Across the road");
        var attacker = await Victim.TakeIn(practice.Services, across, "Prowler");
        var attack = new ForgedCalls(practice.Services, victim, attacker);

        // a leak would be seen: to the practice itself, and to the phone with the right link, the same is told
        var own = await practice.Get<OpenRace>().Run(victim.Desk, victim.RaceId, null, cancel);
        Assert.True(attack.Tells(own!));
        Assert.True(
            attack.Tells((await practice.Get<OpenLink>().Run(victim.Secret, false, cancel))!)
        );
        var before = await Digest(victim);

        Assert.Empty(await attack.RunAsync(0, Attempts, cancel));
        Assert.Equal(before, await Digest(victim));
    }

    private Task<string> Digest(Victim victim) =>
        PracticeRows.DigestAsync(practice.Get<NpgsqlDataSource>(), victim.Desk.PracticeId);
}
