using NodaTime;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Service.Portal;
using Practice.Store.Rehearsals;
using Practice.TestSupport;

namespace Practice.Store.Tests.Portal;

/// <summary>A rehearsal booked for 3 April 2027, two days after the practice's now, and a link to log it with.</summary>
internal sealed record BookedRehearsal(Guid ClientId, Guid RaceId, Guid Id, GivenLink Link)
{
    public static readonly LocalDate RunOn = new(2027, 4, 3);

    public string Secret => Link.Path[(PhonePaths.Root.Length + 1)..];

    public static async Task<BookedRehearsal> Make(
        TestPractice practice,
        ScreeningAnswers? answers = null
    )
    {
        var cancel = TestContext.Current.CancellationToken;
        var client = await practice.NewClient(answers);
        var race = await practice.NewRace(client);
        var draft = await practice.NewDraft(race);
        var desk = practice.Practitioner;
        var rehearsal = Rehearsal.Book(
            desk.PracticeId,
            client,
            race,
            new RehearsalDetails
            {
                RunOn = RunOn,
                Kind = RehearsalKind.Partial,
                Part = new RehearsedPart(draft.Version.Value.Id, FirstDay: 1),
                Breakfast = new BreakfastTrial(3, 120, "Rice and honey, 400 g."),
                RunFuel = new RunFuelTrial(60, 500, "A gel of 25 g every half hour."),
            },
            draft.Version.Value.Plan
        );
        var note = new AuditEntry
        {
            PracticeId = desk.PracticeId,
            At = TestPractice.Now,
            By = desk.Name,
            What = "rehearsal-booked",
            About = rehearsal.Id,
        };
        await practice.Get<RehearsalStore>().Add(rehearsal, note, cancel);
        var link = await practice.Get<GiveLink>().Run(desk, race, cancel);
        return new BookedRehearsal(client, race, rehearsal.Id, link!);
    }

    public Task<PhoneRehearsal?> Open(TestPractice practice) =>
        practice
            .Get<OpenLink>()
            .Rehearsal(Secret, Id, isOpening: false, TestContext.Current.CancellationToken);

    public Task<SubmitOutcome> Send(TestPractice practice, Guid key, Feedback feedback) =>
        practice
            .Get<SubmitFeedback>()
            .Run(Secret, Id, key, feedback, TestContext.Current.CancellationToken);
}
