using Microsoft.AspNetCore.Identity;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Service.Debriefs;
using Practice.Service.Desks;
using Practice.Service.Hosting;
using Practice.Store.Accounts;
using Practice.Store.Clients;
using Practice.Store.Practices;
using Practice.Store.Races;
using Practice.Store.Screening;

namespace Practice.Service.Demo;

/// <summary>Founds the demo practice on an empty database, once.</summary>
public sealed class DemoPractice(
    PracticeStore practices,
    ClientStore clients,
    RaceStore races,
    ScreeningStore screenings,
    UserManager<Account> accounts,
    PracticeCalendar calendar,
    DemoPlans plans,
    DemoCourses courses,
    OpenDebrief openDebrief,
    RecordDebrief recordDebrief,
    PracticeSettings settings
)
{
    /// <summary>Founds practice, account, clients and races where the settings ask for a demo and the database holds no practice;
    /// plans follow behind.</summary>
    public async Task EnsureAsync(CancellationToken cancel)
    {
        if (!settings.Demo || await practices.AnyYet(cancel))
            return;
        var desk = await Found(cancel);
        foreach (var demo in DemoCaseload.Clients(calendar.Today))
        {
            var race = await Enrol(desk, demo, cancel);
            await courses.Begin(desk, race, demo, cancel);
            if (demo.Plan != DemoPlan.None)
                plans.Queue(new DemoPlanOrder(desk, race, demo));
        }
    }

    private async Task<Desk> Found(CancellationToken cancel)
    {
        var practice = new PracticeProfile
        {
            PracticeId = Guid.CreateVersion7(),
            Name = "Larkfield Sports Nutrition",
            Accent = PracticeProfile.DefaultAccent,
            LogoPng = DemoLogo.Png,
            Footer =
                "Larkfield Sports Nutrition · 2 Orchard Row, Saltmere · hello@larkfield.example",
            RegistrationLine = "Registered nutritionist (demo register, no. 000000)",
        };
        var account = new Account
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practice.PracticeId,
            UserName = DemoAccount.Default.Email,
            Email = DemoAccount.Default.Email,
            EmailConfirmed = true,
            DisplayName = "Robin Larkfield",
            Role = StaffRole.Owner,
        };
        var desk = new Desk(practice.PracticeId, account.Id, account.DisplayName, account.Role);
        await practices.Found(
            practice,
            desk.Note("practice-founded", practice.PracticeId, calendar.Now),
            cancel
        );
        var made = await accounts.CreateAsync(account, DemoAccount.Default.Password);
        foreach (var colleague in DemoTeam.Colleagues(practice.PracticeId))
            await accounts.CreateAsync(colleague);
        return made.Succeeded
            ? desk
            : throw new InvalidOperationException(
                $"The demo account was refused: {string.Join(" ", made.Errors.Select(e => e.Description))}"
            );
    }

    private async Task<Guid> Enrol(Desk desk, DemoClient demo, CancellationToken cancel)
    {
        var today = calendar.Today;
        var client = Client.Register(
            desk.PracticeId,
            demo.GivenName,
            demo.FamilyName,
            today.PlusYears(-demo.Age).PlusDays(-110),
            new Physique
            {
                Sex = demo.Sex,
                HeightCm = demo.HeightCm,
                BodyFatPercent = demo.BodyFatPercent,
                Vo2Max = demo.Vo2Max,
                RecentResult = demo.RecentResult,
                WeeklyKm = demo.WeeklyKm,
            },
            new BodyMassEntry(today.PlusDays(-49), BodyMass.OfKilograms(demo.MassKg + 0.8m))
        );
        client.Weigh(
            new BodyMassEntry(today.PlusDays(-21), BodyMass.OfKilograms(demo.MassKg + 0.3m))
        );
        client.Weigh(new BodyMassEntry(today.PlusDays(-6), BodyMass.OfKilograms(demo.MassKg)));
        foreach (var test in demo.SweatTests)
            client.Record(test.For(demo, today));
        client.Restrict(demo.Diet);
        client.Prefer(demo.Tastes);
        client.Speak(demo.Units);
        client.LiveIn(demo.Home);
        client.Annotate(demo.Notes);
        client.Assign(desk.AccountId);
        await clients.Add(client, desk.Note("client-registered", client.Id, calendar.Now), cancel);
        if (demo.Past is { } past)
            await LookBack(desk, client.Id, past, cancel);
        if (demo.Answers is { } answers)
        {
            var screening = ScreeningRecord.Take(
                desk.PracticeId,
                client.Id,
                answers,
                today.PlusDays(-30)
            );
            await screenings.Add(
                screening,
                desk.Note("screening-answered", client.Id, calendar.Now),
                cancel
            );
        }
        var race = Race.Enter(
            desk.PracticeId,
            client.Id,
            Details(demo.Race, demo.Goal, demo.Forecast)
        );
        await races.Add(race, desk.Note("race-entered", race.Id, calendar.Now), cancel);
        return race.Id;
    }

    /// <summary>A race that was run and talked about, by the task that a practitioner uses.</summary>
    private async Task LookBack(Desk desk, Guid clientId, DemoPast past, CancellationToken cancel)
    {
        var race = Race.Enter(desk.PracticeId, clientId, Details(past.Race, null, null));
        await races.Add(race, desk.Note("race-entered", race.Id, calendar.Now), cancel);
        if (await openDebrief.Run(desk, race.Id, cancel) is { } file)
            await recordDebrief.Run(desk, file, past.Report, cancel);
    }

    private RaceDetails Details(DemoRace race, Duration? goal, ExpectedWeather? forecast)
    {
        var sunday = calendar.Today.Next(IsoDayOfWeek.Sunday).PlusWeeks(race.Weekend);
        return new RaceDetails
        {
            Name = race.Name,
            Place = race.Place,
            Discipline = race.DistanceKm > 43 ? Discipline.TrailRunning : Discipline.RoadRunning,
            DistanceKm = race.DistanceKm,
            Start = (race.OnSaturday ? sunday.PlusDays(-1) : sunday).At(race.Start),
            ZoneId = race.ZoneId,
            GoalTime = goal,
            Weather = forecast,
        };
    }
}
