using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Service.Races;
using Practice.Service.Rehearsals;
using Practice.Store.Documents;
using Practice.Store.Tests.Documents;
using Practice.Store.Tests.Portal;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

/// <summary>What a practice sets is used where it belongs, and changes nothing that was decided before.</summary>
public sealed class DefaultsTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static readonly PracticeDefaults Own = new()
    {
        CarbohydrateGPerKg = 9,
        WindowHours = 60,
        OccasionsPerDay = 5,
        Sittings =
        [
            .. DayShape.Of(5).Select(s => s with { Share = 0.20m, Time = s.Time.PlusMinutes(30) }),
        ],
        DrinksShare = 0.20m,
        Note = "Keep it simple.",
        MealIdeas = ["Rice with roast vegetables", "Porridge and honey"],
        Thresholds = new SymptomThresholds(1, 4),
        ReminderDays = 5,
        ThanksAtOnce = true,
        Texts = new()
        {
            Closing = "Good legs!",
            Handout = "With a plan",
            PhoneLink = "With a link",
            Reminder = "Before",
            Thanks = "After",
        },
        KeptYears = 7,
    };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Owner => practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task What_is_set_is_on_file_to_the_last_word()
    {
        Assert.Empty(Unset.In(Own, "defaults"));
        await Set(Own);
        var onFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!.Value.Defaults;
        Assert.Equal(StoredJson.Write(Own), StoredJson.Write(onFile));
    }

    [Fact]
    public async Task A_new_plan_is_spread_over_the_day_as_the_practice_has_it()
    {
        await Set(Own);
        var race = await practice.NewRace(await practice.NewClient());
        var choices = (await practice.Get<OpenRace>().Run(Owner, race, null, Cancel))!.Choices;
        var targets = (await practice.Get<OpenRace>().Run(Owner, race, choices, Cancel))!.Targets;
        var days = LoadingLayout.Days(
            new LocalDateTime(2027, 4, 18, 9, 0),
            Domain.Quantities.BodyMass.OfKilograms(70),
            choices,
            targets,
            Domain.Screening.Adjustments.None
        );
        var full = days.Single(d => d.DaysBefore == 2);
        Assert.Single(full.Occasions.Select(o => o.CarbohydrateAimG).Distinct());
        Assert.Equal(new LocalTime(8, 0), full[OccasionKind.Breakfast].Time);
    }

    [Fact]
    public async Task Verdicts_follow_the_practices_lines_and_what_was_decided_keeps_those_of_its_day()
    {
        await Set(Own);
        var booked = await BookedRehearsal.Make(practice);
        var told = new Feedback
        {
            ReceivedAt = TestPractice.Now,
            Symptoms = [new Symptom(SymptomItem.Nausea, SymptomMoment.End, 4)],
        };
        await booked.Send(practice, Guid.NewGuid(), told);
        var file = await Open(booked);
        Assert.Equal(
            (TrialVerdict.Fail, new SymptomThresholds(1, 4)),
            (file.Review!.Verdict, file.Review.Thresholds)
        );

        await Set(new PracticeDefaults());
        Assert.Equal(TrialVerdict.Adapt, (await Open(booked)).Review!.Verdict);

        await practice
            .Get<DecideRehearsal>()
            .Run(
                practice.Practitioner,
                (await Open(booked)).Rehearsal,
                new(TrialVerdict.Adapt, [], ""),
                Cancel
            );
        await Set(Own);
        Assert.Equal(SymptomThresholds.House, (await Open(booked)).Review!.Thresholds);
    }

    [Fact]
    public async Task What_makes_no_sense_is_refused_with_the_reason()
    {
        var practiceOnFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!;
        foreach (
            var (wrong, why) in new[]
            {
                (
                    Own with
                    {
                        Thresholds = new SymptomThresholds(2, 6),
                    },
                    "severe score always fails"
                ),
                (Own with { OccasionsPerDay = 6 }, "other occasions than the day"),
                (Own with { ReminderDays = 15 }, "0 to 14"),
                (Own with { MealIdeas = [new string('x', 201)] }, "A meal idea"),
                (
                    Own with
                    {
                        MealIdeas = [.. Enumerable.Range(0, 41).Select(i => $"{i}")],
                    },
                    "at most 40"
                ),
                (
                    Own with
                    {
                        Texts = Own.Texts with { Thanks = new string('x', 1501) },
                    },
                    "after feedback"
                ),
            }
        )
        {
            var refusal = await Assert.ThrowsAsync<ArgumentException>(() =>
                practice.Get<SetDefaults>().Run(Owner, practiceOnFile, wrong, Cancel)
            );
            Assert.Contains(why, refusal.Message, StringComparison.Ordinal);
        }
    }

    private async Task<RehearsalFile> Open(BookedRehearsal booked) =>
        (await practice.Get<OpenRehearsal>().Run(practice.Practitioner, booked.Id, null, Cancel))!;

    private async Task Set(PracticeDefaults defaults)
    {
        var onFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!;
        await practice.Get<SetDefaults>().Run(Owner, onFile, defaults, Cancel);
    }
}
