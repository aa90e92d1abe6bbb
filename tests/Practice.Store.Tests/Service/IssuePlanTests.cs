using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Clients;
using Practice.Service.Plans;
using Practice.Service.Screening;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class IssuePlanTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_plan_without_a_hold_is_issued_and_says_by_whom()
    {
        var draft = await practice.NewDraft(await practice.NewRace(await practice.NewClient()));

        Assert.IsType<Issued>(await Issue(draft));

        var issued = (await practice.Open(draft.Version.Value.Id)).Version.Value;
        Assert.Equal(PlanStatus.Issued, issued.Status);
        Assert.Equal(practice.Practitioner.Name, issued.IssuedBy);
        Assert.Equal(TestPractice.Now, issued.IssuedAt);
    }

    [Fact]
    public async Task A_plan_with_a_standing_hold_cannot_be_issued()
    {
        var answers = Questionnaire.NothingToReport.With(Diabetes.Kind, Diabetes.Type1);
        var draft = await practice.NewDraft(
            await practice.NewRace(await practice.NewClient(answers))
        );

        var held = Assert.IsType<HeldBy>(await Issue(draft));

        Assert.NotEmpty(held.Holds);
        Assert.Equal(
            PlanStatus.Draft,
            (await practice.Open(draft.Version.Value.Id)).Version.Value.Status
        );
    }

    [Fact]
    public async Task A_clearance_that_names_the_professional_lifts_the_hold()
    {
        var answers = Questionnaire.NothingToReport.With(Diabetes.Kind, Diabetes.Type1);
        var client = await practice.NewClient(answers);
        var draft = await practice.NewDraft(await practice.NewRace(client));
        foreach (var hold in draft.StandingHolds)
        {
            var nameless = Clear(hold.Key, profession: "");
            Assert.IsType<ClearanceRefused>(
                await practice.Get<ClearHold>().Run(practice.Practitioner, client, nameless, Cancel)
            );
            Assert.IsType<ClearanceNotAllowed>(
                await practice
                    .Get<ClearHold>()
                    .Run(practice.Assistant, client, Clear(hold.Key), Cancel)
            );
            Assert.IsType<Cleared>(
                await practice
                    .Get<ClearHold>()
                    .Run(practice.Practitioner, client, Clear(hold.Key), Cancel)
            );
        }

        Assert.IsType<Issued>(await Issue(await practice.Open(draft.Version.Value.Id)));
    }

    [Fact]
    public async Task An_assistant_never_issues()
    {
        var draft = await practice.NewDraft(await practice.NewRace(await practice.NewClient()));

        Assert.IsType<IssueNotAllowed>(
            await practice.Get<IssuePlan>().Run(practice.Assistant, draft.Version, Cancel)
        );
    }

    [Fact]
    public async Task An_allergy_told_after_drafting_stops_the_plan()
    {
        var clientId = await practice.NewClient();
        var draft = await practice.NewDraft(await practice.NewRace(clientId));
        var served = draft
            .Version.Value.Plan.Days.SelectMany(d => d.Occasions)
            .SelectMany(o => o.Portions)
            .Select(p => FoodLibrary.Standard.Find(p.FoodId)!)
            .First(f => !f.Allergens.IsEmpty);
        var file = (await practice.Get<OpenClient>().Run(practice.Practitioner, clientId, Cancel))!;
        var details = ClientDetails.Of(file.Client.Value) with
        {
            Diet = new Diet { Allergies = served.Allergens },
        };
        await practice.Get<ReviseClient>().Run(practice.Practitioner, file.Client, details, Cancel);

        var stopped = Assert.IsType<UnsafeFoods>(await Issue(draft));

        Assert.Contains(stopped.Foods, f => f.StartsWith(served.Name, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_later_version_withdraws_the_earlier_one()
    {
        var race = await practice.NewRace(await practice.NewClient());
        var first = await practice.NewDraft(race);
        await Issue(first);
        var next = await practice
            .Get<BeginVersion>()
            .Run(practice.Practitioner, first.Version.Value.Id, "Smaller supper", Cancel);

        Assert.IsType<Issued>(await Issue(await practice.Open(next!.Value)));

        Assert.Equal(
            PlanStatus.Withdrawn,
            (await practice.Open(first.Version.Value.Id)).Version.Value.Status
        );
    }

    [Fact]
    public async Task The_second_of_two_editors_is_told_and_overwrites_nothing()
    {
        var draft = await practice.NewDraft(await practice.NewRace(await practice.NewClient()));
        var hers = await practice.Open(draft.Version.Value.Id);
        var his = await practice.Open(draft.Version.Value.Id);

        var first = await Save(hers, hers.Version.Value.Plan with { Note = "hers" });
        var second = await Save(his, his.Version.Value.Plan with { Note = "his" });

        Assert.IsType<Saved<PlanVersion>>(first);
        var theirs = Assert.IsType<Conflict<PlanVersion>>(second).Theirs;
        Assert.Equal("hers", theirs!.Value.Plan.Note);
    }

    [Fact]
    public async Task Another_practice_sees_nothing_of_it()
    {
        var draft = await practice.NewDraft(await practice.NewRace(await practice.NewClient()));
        var stranger = await practice.FoundPractice("Next Door");

        Assert.Null(await practice.Get<OpenPlan>().Run(stranger, draft.Version.Value.Id, Cancel));
        Assert.Null(await practice.Get<OpenClient>().Run(stranger, draft.Client.Id, Cancel));
    }

    private Task<SaveOutcome<PlanVersion>> Save(PlanFile file, RaceWeekPlan plan) =>
        practice.Get<SaveDraft>().Run(practice.Practitioner, file.Version, plan, Cancel);

    private Task<IssueOutcome> Issue(PlanFile file) =>
        practice.Get<IssuePlan>().Run(practice.Practitioner, file.Version, Cancel);

    private static Clearance Clear(string hold, string profession = "diabetologist") =>
        new(
            hold,
            "Dr A. Example",
            profession,
            new LocalDate(2027, 3, 20),
            new LocalDate(2027, 9, 20),
            "Insulin plan agreed for loading and race."
        );
}
