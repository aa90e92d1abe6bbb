using Microsoft.EntityFrameworkCore;
using NodaTime;
using Practice.Domain.Rehearsals;
using Practice.Service.Portal;
using Practice.Store.Audit;
using Practice.Store.Rehearsals;
using Practice.TestSupport;

namespace Practice.Store.Tests.Portal;

public class SubmitFeedbackTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static Feedback Told(string note = "Felt fine") =>
        new()
        {
            ReceivedAt = NodaConstants.UnixEpoch,
            SleepHours = 7.5m,
            UrineColour = 3,
            Note = note,
        };

    [Fact]
    public async Task What_a_client_tells_is_on_file_and_announced()
    {
        var booked = await BookedRehearsal.Make(practice);

        Assert.IsType<FeedbackReceived>(await booked.Send(practice, Guid.NewGuid(), Told()));

        var file = (await booked.Open(practice))!;
        Assert.Equal(RehearsalStatus.FedBack, file.Rehearsal.Status);
        Assert.Equal("Felt fine", file.Rehearsal.Feedback!.Note);
        Assert.Equal(TestPractice.Now, file.Rehearsal.Feedback.ReceivedAt);
        Assert.Equal(1, await Announced(booked));
    }

    [Fact]
    public async Task An_entry_sent_a_hundred_times_at_once_is_stored_once()
    {
        var booked = await BookedRehearsal.Make(practice);
        var key = Guid.NewGuid();

        var outcomes = await Task.WhenAll(
            Enumerable.Range(0, 100).Select(_ => booked.Send(practice, key, Told()))
        );

        Assert.All(outcomes, outcome => Assert.IsType<FeedbackReceived>(outcome));
        Assert.Equal(1, await Announced(booked));
        await using var db = practice
            .Get<IDbContextFactory<PracticeDb>>()
            .Open(practice.Practitioner.PracticeId);
        Assert.Equal(
            1,
            await db.ReceivedFeedback.CountAsync(r => r.RehearsalId == booked.Id, Cancel)
        );
    }

    [Fact]
    public async Task Different_entries_sent_at_once_are_all_taken_in_one_after_the_other()
    {
        var booked = await BookedRehearsal.Make(practice);

        var outcomes = await Task.WhenAll(
            Enumerable.Range(0, 8).Select(i => booked.Send(practice, Guid.NewGuid(), Told($"{i}")))
        );

        Assert.All(outcomes, outcome => Assert.IsType<FeedbackReceived>(outcome));
        Assert.Equal(8, await Announced(booked));
    }

    [Fact]
    public async Task An_old_entry_that_comes_again_does_not_undo_a_correction()
    {
        var booked = await BookedRehearsal.Make(practice);
        var first = Guid.NewGuid();
        await booked.Send(practice, first, Told("as first told"));
        await booked.Send(practice, Guid.NewGuid(), Told("corrected"));

        Assert.IsType<FeedbackReceived>(await booked.Send(practice, first, Told("as first told")));

        Assert.Equal("corrected", (await booked.Open(practice))!.Rehearsal.Feedback!.Note);
    }

    [Fact]
    public async Task After_the_review_nothing_changes_any_more_but_a_repeated_entry_is_no_fault()
    {
        var booked = await BookedRehearsal.Make(practice);
        var key = Guid.NewGuid();
        await booked.Send(practice, key, Told());
        await Review(booked);

        Assert.IsType<ReviewedAlready>(await booked.Send(practice, Guid.NewGuid(), Told("late")));
        Assert.IsType<FeedbackReceived>(await booked.Send(practice, key, Told()));

        var file = (await booked.Open(practice))!;
        Assert.Equal("Felt fine", file.Rehearsal.Feedback!.Note);
        Assert.False(file.IsOpen);
    }

    [Fact]
    public async Task A_number_out_of_range_changes_nothing()
    {
        var booked = await BookedRehearsal.Make(practice);

        Assert.IsType<ImplausibleFeedback>(
            await booked.Send(practice, Guid.NewGuid(), Told() with { SleepHours = 25 })
        );

        Assert.Equal(RehearsalStatus.Booked, (await booked.Open(practice))!.Rehearsal.Status);
        Assert.Equal(0, await Announced(booked));
    }

    [Fact]
    public async Task A_link_serves_the_rehearsals_of_its_own_race_only()
    {
        var booked = await BookedRehearsal.Make(practice);
        var other = await BookedRehearsal.Make(practice);
        var crossed = booked with { Id = other.Id };

        Assert.Null(await crossed.Open(practice));
        Assert.IsType<NothingToTell>(await crossed.Send(practice, Guid.NewGuid(), Told()));
    }

    [Fact]
    public async Task A_revoked_link_takes_nothing_in()
    {
        var booked = await BookedRehearsal.Make(practice);
        await practice.Get<RevokeLink>().Run(practice.Practitioner, booked.Link.Link.Id, Cancel);

        Assert.IsType<NothingToTell>(await booked.Send(practice, Guid.NewGuid(), Told()));
    }

    private async Task<int> Announced(BookedRehearsal booked) =>
        (
            await practice
                .Get<AuditLog>()
                .Latest(practice.Practitioner.PracticeId, booked.Id, 200, Cancel)
        ).Count(a => a.What == "feedback-received");

    private async Task Review(BookedRehearsal booked)
    {
        var store = practice.Get<RehearsalStore>();
        var desk = practice.Practitioner;
        var rehearsal = (await store.Find(desk.PracticeId, booked.Id, Cancel))!;
        rehearsal.Value.Review(
            new ReviewDecision(TrialVerdict.Pass, desk.Name, TestPractice.Now, "")
        );
        await store.Save(rehearsal, Sample.Audit(desk.PracticeId), Cancel);
    }
}
