using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Handouts;
using Practice.Handouts.Content;
using Practice.Service.Desks;

namespace Practice.Service.Practices.Brand;

/// <summary>A fact in short on the first page.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The value with its unit.</param>
/// <param name="Note">A word to it; may be empty.</param>
public sealed record PaperFact(string Label, string Value, string Note);

/// <summary>The first page of a plan on paper, as words and colours.</summary>
public sealed record PaperPreview(
    string Kicker,
    string Title,
    ImmutableArray<string> Lines,
    ImmutableArray<PaperFact> Facts,
    ImmutableArray<string> Foot,
    string Accent,
    string OnAccent,
    string OnAccentSoft,
    string AccentText
);

/// <summary>Shows what a face does to papers before it is saved: an invented runner's plan, by the code that prints.</summary>
public sealed class PreviewPaper(PracticeCalendar calendar)
{
    public PaperPreview Run(Desk desk, PracticeProfile face)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var options = new HandoutOptions
        {
            Version = 1,
            IssuedOn = calendar.Today,
            IssuedBy = desk.Name,
            Today = calendar.Today,
        };
        var page = FirstPage.Of(LoadingHandout.Build(Plan(desk, face), face, options));
        return new(
            page.Cover.Kicker,
            page.Cover.Title,
            page.Cover.Lines,
            [.. page.InShort?.Items.Select(f => new PaperFact(f.Label, f.Value, f.Note)) ?? []],
            page.Foot,
            page.Accent,
            page.OnAccent,
            page.OnAccentSoft,
            page.AccentText
        );
    }

    private RaceWeekPlan Plan(Desk desk, PracticeProfile face)
    {
        var today = calendar.Today;
        var runner = Client.Register(
            desk.PracticeId,
            "Alex",
            "Sample",
            today.PlusYears(-34),
            new Physique
            {
                Sex = Sex.Female,
                HeightCm = 170,
                Vo2Max = 50,
            },
            new BodyMassEntry(today, BodyMass.OfKilograms(60))
        );
        runner.Speak(face.Units);
        var race = Race.Enter(
            desk.PracticeId,
            runner.Id,
            new RaceDetails
            {
                Name = "Spring Marathon",
                DistanceKm = 42.195m,
                Start = today.PlusDays(12).At(new LocalTime(9, 0)),
                ZoneId = "Europe/London",
                GoalTime = Duration.FromMinutes(225),
            }
        );
        var screening = new ScreeningOutcome([], [], Adjustments.None);
        var choices = new LoadingChoices();
        var targets = LoadingTargets.For(runner, race, screening, choices, today);
        return LoadingPlan.Empty(runner, race, screening, choices, MenuStyle.Vary, targets);
    }
}
