using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Service.Today;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

/// <summary>Today is 1 April 2027, the race on the 18th: Sunday the 4th is the last day of the rehearsal weeks.</summary>
public class RehearsalTaskTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static readonly LocalDate Sunday = new(2027, 4, 4);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_last_Sunday_of_the_rehearsal_weeks_is_proposed_and_booked_with_the_plan_as_it_is()
    {
        var draft = await DraftAsync();
        var board = await BoardAsync(draft.Race.Id);
        Assert.Equal(Sunday, Assert.Single(board.Proposal.Places).RunOn);

        var booked = Assert.IsType<Booked>(await BookAsync(draft));

        var rehearsal = (await OpenAsync(booked.RehearsalId)).Rehearsal.Value;
        Assert.Equal(draft.Version.Value.Id, rehearsal.Details.Part.PlanVersionId);
        Assert.Equivalent(draft.Version.Value.Plan, rehearsal.Plan, strict: true);
        Assert.Empty((await BoardAsync(draft.Race.Id)).Proposal.Places);
    }

    [Fact]
    public async Task An_edit_of_the_draft_does_not_change_what_was_asked_of_the_client()
    {
        var draft = await DraftAsync();
        var id = await BookedAsync(draft);
        var before = (await OpenAsync(id)).Rehearsal.Value.Sittings();
        var plan = draft.Version.Value.Plan;
        var portion = plan.Days[^1].Occasions[0].Portions[0];
        var edited = plan.Remove(
            new(plan.Days[^1].Date, plan.Days[^1].Occasions[0].Kind, portion.FoodId)
        );
        await practice.Get<SaveDraft>().Run(practice.Practitioner, draft.Version, edited, Cancel);

        Assert.Equivalent(before, (await OpenAsync(id)).Rehearsal.Value.Sittings(), strict: true);
    }

    [Fact]
    public async Task A_day_that_was_marked_as_travel_is_refused_and_the_client_may_not_move_there()
    {
        var draft = await DraftAsync();
        var id = await BookedAsync(draft);
        await practice
            .Get<ReviseBackground>()
            .Run(
                practice.Practitioner,
                draft.Client.Id,
                b => b.Block(new(2027, 4, 5), new(2027, 4, 9), BlockedBy.Travel),
                Cancel
            );

        var moved = await MoveAsync(id, new(2027, 4, 8));

        var why = Assert.Single(Assert.IsType<NoPlaceThere>(moved).Why, n => n.Blocks);
        Assert.Contains("travel", why.Text, StringComparison.Ordinal);
        Assert.Equal(Sunday, (await OpenAsync(id)).Rehearsal.Value.RunOn);
    }

    [Fact]
    public async Task A_rehearsal_moved_to_a_day_without_a_long_run_is_moved_and_warned_of()
    {
        var id = await BookedAsync(await DraftAsync());

        var moved = Assert.IsType<Booked>(await MoveAsync(id, new(2027, 4, 5)));

        Assert.Contains(moved.Warnings, n => n.Text.Contains("long run", StringComparison.Ordinal));
        Assert.Equal(new LocalDate(2027, 4, 5), (await OpenAsync(id)).Rehearsal.Value.RunOn);
    }

    [Fact]
    public async Task A_cancelled_rehearsal_makes_room_for_another()
    {
        var draft = await DraftAsync();
        var id = await BookedAsync(draft);

        Assert.True(
            await practice.Get<CancelRehearsal>().Run(practice.Assistant, id, "A cold", Cancel)
        );

        Assert.NotEmpty((await BoardAsync(draft.Race.Id)).Proposal.Places);
    }

    [Fact]
    public async Task An_assistant_books_and_records_but_never_decides()
    {
        var id = await BookedAsync(await DraftAsync(), practice.Assistant);
        await TellAsync(id, Feeling(0), practice.Assistant);

        Assert.IsType<DecisionNotAllowed>(await DecideAsync(id, [], desk: practice.Assistant));
    }

    [Fact]
    public async Task A_bad_rehearsal_leads_to_a_new_draft_without_the_food_and_the_planner_avoids_it()
    {
        var draft = await DraftAsync();
        var food = draft.Version.Value.Plan.Days[^1].Occasions[0].Portions[0].FoodId;
        await SuspectAsync(draft, food);
        var id = await BookedAsync(draft);
        await TellAsync(id, Feeling(6), ate: food);
        var file = await OpenAsync(id);
        Assert.Equal(TrialVerdict.Fail, file.Review!.Verdict);
        var proposal = file.Proposals.First(p => p.Change is LeaveOutFood);
        Assert.Equal(food, ((LeaveOutFood)proposal.Change!).FoodId);
        var preview = await practice
            .Get<DecideRehearsal>()
            .Preview(practice.Practitioner, id, Judge(proposal), Cancel);
        Assert.False(preview!.IsEmpty);

        var decided = Assert.IsType<RehearsalDecided>(await DecideAsync(id, [proposal.Key]));

        var next = await practice.Open(decided.NewVersionId!.Value);
        Assert.Equal(PlanStatus.Draft, next.Version.Value.Status);
        Assert.Equal(draft.Version.Value.Number + 1, next.Version.Value.Number);
        Assert.Contains(proposal.Title, next.Version.Value.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain(food, Eaten(next.Version.Value.Plan));
        Assert.Contains(food, (await ClientAsync(draft.Client.Id)).Client.Value.Tastes.Suspect);
        var read = await OpenAsync(id);
        Assert.Equal(RehearsalStatus.Reviewed, read.Rehearsal.Value.Status);
        Assert.Equivalent(preview, read.Came!.Diff, strict: true);
        Assert.True(
            read.Rehearsal.Value.Decision!.Answers.Single(a => a.Key == proposal.Key).Accepted
        );
    }

    [Fact]
    public async Task A_clean_full_rehearsal_keeps_the_plan_and_teaches_what_sat_well()
    {
        var draft = await DraftAsync();
        var id = await BookedAsync(draft);
        await TellAsync(id, Feeling(1));
        Assert.Empty((await OpenAsync(id)).Proposals);

        var decided = Assert.IsType<RehearsalDecided>(await DecideAsync(id, [], TrialVerdict.Pass));

        Assert.Null(decided.NewVersionId);
        var client = await ClientAsync(draft.Client.Id);
        var rehearsed = (await OpenAsync(id)).Rehearsal.Value.Sittings();
        Assert.Equal(
            rehearsed.SelectMany(s => s.Portions).Select(p => p.FoodId).Distinct().Order(),
            client.Client.Value.Tastes.Tolerated.Order()
        );
        Assert.Empty(client.Client.Value.Tastes.Suspect);
    }

    [Theory]
    [InlineData("step-back")]
    [InlineData("shift-to-drinks")]
    [InlineData("more-sittings")]
    [InlineData("lower-fibre")]
    public async Task Every_kind_of_change_fills_every_sitting_and_meets_the_new_aim(string key)
    {
        var draft = await DraftAsync();
        var id = await BookedAsync(draft);
        await TellAsync(id, Feeling(6, SymptomItem.Nausea));

        var decided = Assert.IsType<RehearsalDecided>(await DecideAsync(id, [key]));

        var plan = (await practice.Open(decided.NewVersionId!.Value)).Version.Value.Plan;
        Assert.NotEqual(
            (draft.Version.Value.Plan.Choices, draft.Version.Value.Plan.Days[^1].Limits),
            (plan.Choices, plan.Days[^1].Limits)
        );
        Assert.All(plan.Days.SelectMany(d => d.Occasions), o => Assert.NotEmpty(o.Portions));
        Assert.All(
            plan.Days,
            d => Assert.InRange(d.Totals.CarbohydrateG / d.Limits.CarbohydrateAimG, 0.95m, 1.05m)
        );
    }

    [Fact]
    public async Task A_warning_sign_holds_every_plan_comes_first_today_and_is_lifted_by_a_physician_alone()
    {
        var draft = await DraftAsync();
        var id = await BookedAsync(draft);
        await TellAsync(id, Feeling(2) with { WarningSigns = [WarningSign.ChestPain] });

        var file = await OpenAsync(id);
        Assert.NotNull(file.Hold);
        Assert.Empty(file.Proposals);
        var held = Assert.IsType<HeldBy>(
            await practice
                .Get<IssuePlan>()
                .Run(
                    practice.Practitioner,
                    (await practice.Open(draft.Version.Value.Id)).Version,
                    Cancel
                )
        );
        Assert.Contains(held.Holds, h => h.Key == WarningSigns.HoldKey);
        var today = await practice.Get<TodaysWork>().Run(practice.Practitioner, Cancel);
        Assert.Contains(
            today.Where(t => t.Kind == TodayKind.WarningSign),
            t => t.RehearsalId == id
        );
        Assert.Equal(TodayKind.WarningSign, today[0].Kind);
        Assert.IsType<RehearsingHeld>(await BookAsync(draft));

        Assert.IsType<ClearanceRefused>(await ClearAsync(draft, new(2027, 3, 31)));
        Assert.IsType<Cleared>(await ClearAsync(draft, new(2027, 4, 1)));

        Assert.Null((await OpenAsync(id)).Hold);
    }

    [Fact]
    public async Task Today_asks_for_a_rehearsal_then_for_the_review_of_what_came_back()
    {
        var draft = await DraftAsync();
        Assert.Equal(TodayKind.RehearsalToBook, await TodayAsync(draft));

        var id = await BookedAsync(draft);
        Assert.Null(await TodayAsync(draft));

        await TellAsync(id, Feeling(0));
        Assert.Equal(TodayKind.FeedbackToReview, await TodayAsync(draft));

        await DecideAsync(id, [], TrialVerdict.Pass);
        Assert.Null(await TodayAsync(draft));
    }

    private async Task<TodayKind?> TodayAsync(PlanFile draft) =>
        (await practice.Get<TodaysWork>().Run(practice.Practitioner, Cancel))
            .Where(t => t.Race.RaceId == draft.Race.Id)
            .Select(t => (TodayKind?)t.Kind)
            .FirstOrDefault();

    private async Task<PlanFile> DraftAsync() =>
        await practice.NewDraft(await practice.NewRace(await practice.NewClient()));

    private Task<BookOutcome> BookAsync(PlanFile draft, Desk? desk = null) =>
        practice
            .Get<BookRehearsal>()
            .Run(
                desk ?? practice.Practitioner,
                draft.Race.Id,
                RehearsalPlace.On(RehearsalKind.Full, Sunday),
                Cancel
            );

    private async Task<Guid> BookedAsync(PlanFile draft, Desk? desk = null) =>
        Assert.IsType<Booked>(await BookAsync(draft, desk)).RehearsalId;

    private Task<BookOutcome> MoveAsync(Guid id, LocalDate runOn) =>
        practice.Get<MoveRehearsal>().Run(practice.Assistant, id, runOn, Cancel);

    private async Task<RehearsalFile> OpenAsync(Guid id) =>
        (await practice.Get<OpenRehearsal>().Run(practice.Practitioner, id, null, Cancel))!;

    private async Task<RaceRehearsals> BoardAsync(Guid raceId) =>
        (await practice.Get<ProposeRehearsals>().Run(practice.Practitioner, raceId, Cancel))!;

    private async Task<ClientFile> ClientAsync(Guid id) =>
        (await practice.Get<OpenClient>().Run(practice.Practitioner, id, Cancel))!;

    private Task<bool> SuspectAsync(PlanFile draft, string food) =>
        practice
            .Get<ReviseBackground>()
            .Run(
                practice.Practitioner,
                draft.Client.Id,
                b => b.Remember(new() { PastTrouble = [food] }),
                Cancel
            );

    /// <summary>All of it was eaten, or one food alone.</summary>
    private async Task TellAsync(Guid id, Feedback feedback, Desk? desk = null, string? ate = null)
    {
        var onFile = (await OpenAsync(id)).Rehearsal;
        var eaten = onFile.Value.Sittings().Select(EatenOccasion.AsPlanned);
        if (ate is not null)
            eaten = eaten.Select(o =>
                o with
                {
                    Portions =
                    [
                        .. o.Portions.Select(p =>
                            p.FoodId == ate ? p : EatenPortion.Left(p.FoodId)
                        ),
                    ],
                }
            );
        var told = await practice
            .Get<RecordFeedback>()
            .Run(
                desk ?? practice.Practitioner,
                onFile,
                feedback with
                {
                    Occasions = [.. eaten],
                },
                Cancel
            );
        Assert.IsType<Saved<Rehearsal>>(told);
    }

    private async Task<DecideOutcome> DecideAsync(
        Guid id,
        string[] accepted,
        TrialVerdict verdict = TrialVerdict.Fail,
        Desk? desk = null
    ) =>
        await practice
            .Get<DecideRehearsal>()
            .Run(
                desk ?? practice.Practitioner,
                (await OpenAsync(id)).Rehearsal,
                new(verdict, [.. accepted], "One thing at a time"),
                Cancel
            );

    private Task<ClearOutcome> ClearAsync(PlanFile draft, LocalDate on) =>
        practice
            .Get<ClearHold>()
            .Run(
                practice.Practitioner,
                draft.Client.Id,
                new(
                    WarningSigns.HoldKey,
                    "Dr A. Example",
                    "physician",
                    on,
                    new LocalDate(2027, 6, 1),
                    "Heart examined, may race."
                ),
                Cancel
            );

    private static RehearsalJudgement Judge(Proposal proposal) =>
        new(TrialVerdict.Fail, [proposal.Key], "");

    private static Feedback Feeling(int score, SymptomItem item = SymptomItem.UpperPain) =>
        new() { ReceivedAt = default, Symptoms = [new(item, SymptomMoment.During, score, 30)] };

    private static IEnumerable<string> Eaten(RaceWeekPlan plan) =>
        plan
            .EveryDay.SelectMany(d => d.Occasions)
            .SelectMany(o => o.Portions)
            .Select(p => p.FoodId);
}
