using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Desks;
using Practice.Service.Mail;
using Practice.Service.Portal;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Service.Rehearsals;
using Practice.Store.Clients;
using Practice.Store.Mail;
using Practice.Store.Rehearsals;
using Practice.Store.Tests.Portal;
using Practice.TestSupport;

namespace Practice.Store.Tests.Mail;

/// <summary>What clients are written: the link, the reminder, the thanks; each once, and to nobody who did not agree.</summary>
public sealed class ClientLettersTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const string Site = "https://practice.example/";
    private const string Address = "ines@example.org";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Desk => practice.Practitioner;

    [Fact]
    public async Task A_link_sent_to_a_client_opens_her_pages()
    {
        var booked = await Make();
        var sent = await practice.Get<SendLink>().Run(Desk, booked.RaceId, Site, Cancel);
        Assert.Equal(new Posted(Address), sent);
        var letter = Assert.Single(await Letters(booked, LetterKind.PhoneLink));
        var link = Read(letter).Link!.Address;
        Assert.StartsWith(Site + "p/", link, StringComparison.Ordinal);
        var secret = link[(Site.Length + 2)..];
        var pages = await practice.Get<OpenLink>().Run(secret, isOpening: true, Cancel);
        Assert.Equal("Ines", pages?.GivenName);
        Assert.Equal(
            2,
            (await practice.Get<LinksOfRace>().Run(Desk, booked.RaceId, Cancel)).Length
        );
    }

    [Fact]
    public async Task Without_an_address_nothing_is_sent_and_no_link_is_given()
    {
        var booked = await BookedRehearsal.Make(practice);
        Assert.IsType<NoAddress>(
            await practice.Get<SendLink>().Run(Desk, booked.RaceId, Site, Cancel)
        );
        Assert.Single(await practice.Get<LinksOfRace>().Run(Desk, booked.RaceId, Cancel));
        Assert.IsType<NoAddress>(await Remind(booked));
    }

    [Fact]
    public async Task A_rehearsal_near_is_reminded_of_once_however_many_look()
    {
        var booked = await Make();
        await Task.WhenAll(
            Enumerable.Range(0, 4).Select(_ => practice.Get<Reminders>().Run(Cancel))
        );
        await practice.Get<Reminders>().Run(Cancel);
        var letter = Assert.Single(await Letters(booked, LetterKind.RehearsalReminder));
        Assert.Equal("Test Practice: your rehearsal on Saturday 3 April", letter.Subject);
        Assert.Contains(
            "first meal is on Friday 2 April",
            string.Join(' ', Read(letter).Paragraphs),
            StringComparison.Ordinal
        );
        Assert.IsType<SaidBefore>(await Remind(booked));
    }

    [Fact]
    public async Task Nobody_is_reminded_who_did_not_agree_or_whose_rehearsal_was_called_off_or_is_far()
    {
        var withoutConsent = await Make(agrees: false);
        var calledOff = await Make();
        await practice.Get<CancelRehearsal>().Run(Desk, calledOff.Id, "A cold", Cancel);
        var far = await Make();
        var moved = await practice
            .Get<MoveRehearsal>()
            .Run(Desk, far.Id, new LocalDate(2027, 4, 6), Cancel);
        Assert.IsType<Booked>(moved);
        var byHandOnly = await Make();
        await Set(new PracticeDefaults { ReminderDays = 0 });
        await practice.Get<Reminders>().Run(Cancel);
        Assert.Empty(await Letters(byHandOnly, LetterKind.RehearsalReminder));

        await Set(new PracticeDefaults { ReminderDays = 3 });
        await practice.Get<Reminders>().Run(Cancel);
        Assert.Single(await Letters(byHandOnly, LetterKind.RehearsalReminder));
        foreach (var booked in new[] { withoutConsent, calledOff, far })
            Assert.Empty(await Letters(booked, LetterKind.RehearsalReminder));
        Assert.IsType<NothingToSend>(await Remind(calledOff));
        Assert.IsType<Posted>(await Remind(withoutConsent)); // by hand, on her own word
    }

    [Fact]
    public async Task Nobody_is_reminded_while_a_doctor_has_to_allow_rehearsing()
    {
        var booked = await Make();
        var next = await AnotherOf(booked);
        var told = new Feedback
        {
            ReceivedAt = TestPractice.Now,
            WarningSigns = [WarningSign.Collapse],
        };
        await booked.Send(practice, Guid.NewGuid(), told);
        await practice.Get<Reminders>().Run(Cancel);
        Assert.Empty(await Letters(next, LetterKind.RehearsalReminder));
        Assert.IsType<NothingToSend>(await Remind(next));
    }

    [Fact]
    public async Task A_reminder_that_waits_is_not_sent_for_a_day_that_no_longer_holds()
    {
        var booked = await Make();
        await Remind(booked);
        await practice.Get<MoveRehearsal>().Run(Desk, booked.Id, new LocalDate(2027, 4, 4), Cancel);
        Assert.IsType<Posted>(await Remind(booked));

        var handedOver = new List<LocalDate?>();
        while (
            await practice
                .Get<LetterStore>()
                .SendNext(
                    TestPractice.Now,
                    (letter, _, _) =>
                    {
                        if (letter.ClientId == booked.ClientId)
                            handedOver.Add(letter.RunOn);
                        return Task.FromResult(SendResult.Sent);
                    },
                    Cancel
                )
        ) { }
        Assert.Equal([new LocalDate(2027, 4, 4)], handedOver);
        var (later, earlier) = (await Letters(booked, LetterKind.RehearsalReminder)) switch
        {
            [var newest, var oldest] => (newest, oldest),
            var others => throw new InvalidOperationException($"{others.Count} letters"),
        };
        Assert.NotNull(later.SentAt);
        Assert.Equal((null, true), (earlier.SentAt, earlier.GivenUpAt is not null));
    }

    [Fact]
    public async Task Feedback_is_thanked_for_at_once_only_where_the_practice_wants_it_and_once()
    {
        await Set(new PracticeDefaults { ThanksAtOnce = false });
        var byHand = await Make();
        await byHand.Send(practice, Guid.NewGuid(), Told());
        Assert.Empty(await Letters(byHand, LetterKind.Thanks));
        Assert.IsType<Posted>(await practice.Get<SendThanks>().Run(Desk, byHand.Id, Cancel));
        Assert.IsType<SaidBefore>(await practice.Get<SendThanks>().Run(Desk, byHand.Id, Cancel));

        await Set(new PracticeDefaults { ThanksAtOnce = true });
        var atOnce = await Make();
        var told = await Task.WhenAll(
            Enumerable.Range(0, 6).Select(_ => atOnce.Send(practice, Guid.NewGuid(), Told()))
        );
        Assert.All(told, outcome => Assert.IsType<FeedbackReceived>(outcome));
        var letter = Assert.Single(await Letters(atOnce, LetterKind.Thanks));
        Assert.Equal("Test Practice", letter.WrittenBy);

        var withoutConsent = await Make(agrees: false);
        await withoutConsent.Send(practice, Guid.NewGuid(), Told());
        Assert.Empty(await Letters(withoutConsent, LetterKind.Thanks));
        var unasked = await Make();
        Assert.IsType<NothingToSend>(
            await practice.Get<SendThanks>().Run(Desk, unasked.Id, Cancel)
        );
    }

    [Fact]
    public async Task The_practices_own_words_are_taken_and_numbers_kept_from_whom_they_harm()
    {
        const string own = "Drink 500 ml with breakfast. Bring your bottle.";
        await Set(new PracticeDefaults { Texts = new() { Reminder = own } });
        var anybody = await Make();
        await Remind(anybody);
        Assert.Contains(
            own,
            Read(Assert.Single(await Letters(anybody, LetterKind.RehearsalReminder))).Paragraphs
        );

        var harmed = await Make(
            answers: Questionnaire.NothingToReport.With(
                EatingAndEnergy.EatingDisorder,
                [EatingAndEnergy.EatingDisorder.Choices[1]]
            )
        );
        await Remind(harmed);
        await practice.Get<SendLink>().Run(Desk, harmed.RaceId, Site, Cancel);
        await harmed.Send(practice, Guid.NewGuid(), Told());
        await practice.Get<SendThanks>().Run(Desk, harmed.Id, Cancel);
        foreach (var letter in await All(harmed))
            Assert.All(
                Read(letter).Paragraphs.Append(letter.Subject),
                words => Assert.True(NumberFree.Allows(words), words)
            );
        var reminder = Read(Assert.Single(await Letters(harmed, LetterKind.RehearsalReminder)));
        Assert.Contains("Bring your bottle.", reminder.Paragraphs);
    }

    private static Feedback Told() => new() { ReceivedAt = TestPractice.Now, Note = "Fine" };

    private Task<SendOutcome> Remind(BookedRehearsal booked) =>
        practice.Get<SendReminder>().Run(Desk, booked.Id, Site, Cancel);

    /// <summary>A rehearsal in two days of a client with an address.</summary>
    private async Task<BookedRehearsal> Make(bool agrees = true, ScreeningAnswers? answers = null)
    {
        var booked = await BookedRehearsal.Make(practice, answers);
        var store = practice.Get<ClientStore>();
        var client = (await store.Find(Desk.PracticeId, booked.ClientId, Cancel))!;
        client.Value.Identify("Ines", "Example", client.Value.BirthDate, Address);
        if (agrees)
            client.Value.Agree(
                new Consent(new LocalDate(2027, 3, 1), 1, ConsentWay.OnPaper, Desk.Name)
            );
        await store.Save(client, Sample.Audit(Desk.PracticeId), Cancel);
        return booked;
    }

    /// <summary>A second rehearsal of the same client, a day later.</summary>
    private async Task<BookedRehearsal> AnotherOf(BookedRehearsal booked)
    {
        var store = practice.Get<RehearsalStore>();
        var first = (await store.Find(Desk.PracticeId, booked.Id, Cancel))!.Value;
        var second = Rehearsal.Book(
            Desk.PracticeId,
            booked.ClientId,
            booked.RaceId,
            first.Details with
            {
                RunOn = first.RunOn.PlusDays(1),
            },
            first.Plan
        );
        await store.Add(second, Sample.Audit(Desk.PracticeId), Cancel);
        return booked with { Id = second.Id };
    }

    private async Task Set(PracticeDefaults defaults)
    {
        var owner = Desk with { Role = StaffRole.Owner };
        var face = (await practice.Get<SetBrand>().Open(owner, Cancel))!;
        await practice.Get<SetDefaults>().Run(owner, face, defaults, Cancel);
    }

    private async Task<List<Letter>> All(BookedRehearsal booked) =>
        [.. await practice.Get<LettersToClient>().Run(Desk, booked.ClientId, Cancel)];

    private async Task<List<Letter>> Letters(BookedRehearsal booked, LetterKind kind) =>
        [.. (await All(booked)).Where(l => l.Kind == kind)];

    private LetterContent Read(Letter letter) => practice.Get<LetterSeal>().Open(letter.Sealed);
}
