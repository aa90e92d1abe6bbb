using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Service.Portal;
using Practice.TestSupport;
using Practice.Web.Features.Portal.Answers;

namespace Practice.Web.Tests.Features.Portal;

/// <summary>From the fields of the phone page to what a client told, and back.</summary>
[Collection(DeskCollection.Name)]
public class FeedbackAnswersTests(TestPractice practice) : IClassFixture<TestPractice>
{
    [Fact]
    public async Task What_was_told_fills_the_page_and_comes_back_from_it_unchanged()
    {
        var file = await Logged(Told);

        var back = FeedbackAnswers.Read(FeedbackAnswers.Of(file), file);

        Assert.Equal(Comparable(file.Rehearsal.Feedback!), Comparable(back));
        Assert.Equal(file.Rehearsal.Feedback!.Run, back.Run);
    }

    [Fact]
    public async Task An_empty_page_tells_nothing_and_no_zero()
    {
        var file = await Logged(null);

        var told = FeedbackAnswers.Read(new PageAnswers(), file);

        Assert.Empty(told.Occasions);
        Assert.Empty(told.Symptoms);
        Assert.Null(told.Run);
        Assert.Null(told.FluidMl);
        Assert.Null(told.SleepHours);
        Assert.Null(told.BreakfastPart);
        Assert.Null(told.UrineColour);
    }

    [Fact]
    public async Task One_tap_tells_that_a_whole_sitting_was_eaten()
    {
        var file = await Logged(null);
        var answers = new PageAnswers { [MealAnswers.Sitting(file.Sittings[0])] = PartAnswers.All };

        var told = Assert.Single(FeedbackAnswers.Read(answers, file).Occasions);

        Assert.Equal(
            EatenOccasion.AsPlanned(file.Sittings[0]).Portions.AsEnumerable(),
            told.Portions.AsEnumerable()
        );
    }

    [Fact]
    public async Task What_is_taken_on_the_run_is_reckoned_from_its_length()
    {
        var file = await Logged(null);
        var answers = new PageAnswers { [RunAnswers.Fuel] = PartAnswers.Half };

        FeedbackAnswers.Read(answers, file);
        Assert.Contains(RunAnswers.Minutes, answers.Refusals.Keys);

        answers[RunAnswers.Hours] = "2";
        answers[RunAnswers.Minutes] = "30";
        // half of 60 g/h over two and a half hours
        Assert.Equal(75m, FeedbackAnswers.Read(answers, file).Run!.CarbohydrateG);
    }

    [Fact]
    public async Task Who_may_not_weigh_is_not_heard_on_weight_and_number_free_drinks_count_in_glasses()
    {
        var file = await Logged(null);
        file = file with { Phone = file.Phone with { MayWeigh = false, IsNumberFree = true } };
        var answers = new PageAnswers
        {
            [BodyAnswers.MassBefore] = "60",
            [RunAnswers.Glasses] = "2",
        };

        var told = FeedbackAnswers.Read(answers, file);

        Assert.Null(told.MassBefore);
        Assert.Equal(500m, told.Run!.FluidMl);
    }

    [Fact]
    public async Task American_scales_are_read_in_pounds()
    {
        var file = await Logged(null);
        file = file with { Phone = file.Phone with { Units = HouseholdUnits.UsCustomary } };
        var answers = new PageAnswers { [BodyAnswers.MassBefore] = "150" };

        // 150 lb of 0.45359237 kg
        Assert.Equal(68.04m, FeedbackAnswers.Read(answers, file).MassBefore!.Value.Kilograms);
    }

    [Theory]
    [InlineData(BodyAnswers.Sleep, "25")]
    [InlineData(BodyAnswers.Sleep, "eight")]
    [InlineData(BodyAnswers.MassBefore, "7")]
    [InlineData(BodyAnswers.Urine, "9")]
    [InlineData(RunAnswers.Km, "-3")]
    [InlineData("felt.Before.Nausea", "11")]
    public async Task A_number_that_can_not_be_is_refused_beside_its_field(
        string field,
        string typed
    )
    {
        var file = await Logged(null);
        var answers = new PageAnswers { ["felt.Before"] = SymptomAnswers.Some, [field] = typed };

        FeedbackAnswers.Read(answers, file);

        Assert.Equal([field], answers.Refusals.Keys);
        Assert.Equal(typed, answers[field]);
    }

    [Fact]
    public async Task What_the_page_does_not_ask_stays_as_somebody_else_recorded_it()
    {
        var file = await Logged(sittings =>
            Told(sittings) with
            {
                Run = new RunFeedback { Time = Duration.FromHours(3), WetBulbGlobeC = 24 },
            }
        );

        Assert.Equal(24m, FeedbackAnswers.Read(FeedbackAnswers.Of(file), file).Run!.WetBulbGlobeC);
    }

    private static Feedback Told(ImmutableArray<RehearsedSitting> sittings) =>
        new()
        {
            ReceivedAt = NodaConstants.UnixEpoch,
            Occasions =
            [
                EatenOccasion.AsPlanned(sittings[0]),
                new(
                    sittings[1].Date,
                    sittings[1].Kind,
                    [
                        EatenPortion.Amount(sittings[1].Portions[0].FoodId, 0.5m),
                        .. sittings[1]
                            .Portions.Skip(1)
                            .Select(
                                (p, i) =>
                                    i == 0
                                        ? EatenPortion.Replaced(p.FoodId, "Two rolls")
                                        : EatenPortion.Left(p.FoodId)
                            ),
                    ],
                    []
                ),
                new(
                    sittings[2].Date,
                    sittings[2].Kind,
                    [EatenPortion.Amount(sittings[2].Portions[0].FoodId, 1.25m)],
                    []
                ),
            ],
            BreakfastPart = 1.5m,
            Symptoms =
            [
                .. SymptomAnswers.Items.Select(i => new Symptom(i, SymptomMoment.Before, 0)),
                .. SymptomAnswers.Items.Select(i => new Symptom(
                    i,
                    SymptomMoment.During,
                    i == SymptomItem.Nausea ? 6 : 0,
                    90
                )),
            ],
            WarningSigns = [WarningSign.BloodInStool, WarningSign.ChestPain],
            Vomited = true,
            FluidMl = 1500,
            MassBefore = BodyMass.OfKilograms(61.2m),
            MassAfter = BodyMass.OfKilograms(60.1m),
            UrineColour = 4,
            SleepHours = 6.5m,
            IllOrPeriod = true,
            Run = new RunFeedback
            {
                DistanceKm = 30.5m,
                Time = Duration.FromMinutes(165),
                AtRaceEffort = Duration.FromMinutes(45),
                CarbohydrateG = 123.75m, // three quarters of 60 g/h
                FluidMl = 900,
                CaffeineMg = 80,
                StoppedByGut = true,
                Note = "Windy",
            },
            Note = "Better than last time",
        };

    // records with arrays compare by reference: their content, written out, does not
    private static string Comparable(Feedback told) =>
        System.Text.Json.JsonSerializer.Serialize(
            new
            {
                Occasions = told.Occasions.Select(o => new
                {
                    o.Date,
                    o.Kind,
                    o.Portions,
                }),
                told.BreakfastPart,
                told.Symptoms,
                told.WarningSigns,
                told.Vomited,
                told.FluidMl,
                Before = told.MassBefore?.Kilograms,
                After = told.MassAfter?.Kilograms,
                told.UrineColour,
                told.SleepHours,
                told.IllOrPeriod,
                told.Note,
            }
        );

    private async Task<PhoneRehearsal> Logged(
        Func<ImmutableArray<RehearsedSitting>, Feedback>? told
    )
    {
        var raceId = await practice.NewRace(await practice.NewClient());
        var version = (await practice.NewDraft(raceId)).Version.Value;
        var rehearsal = Rehearsal.Book(
            practice.Practitioner.PracticeId,
            Guid.NewGuid(),
            raceId,
            new RehearsalDetails
            {
                RunOn = new LocalDate(2027, 4, 3),
                Kind = RehearsalKind.Full,
                Part = new RehearsedPart(version.Id, 2),
                Breakfast = new BreakfastTrial(3, 120, ""),
                RunFuel = new RunFuelTrial(60, 500, ""),
            },
            version.Plan
        );
        if (told is not null)
            rehearsal.Tell(told(rehearsal.Sittings()));
        return new PhoneRehearsal(Phone(), rehearsal, rehearsal.Details, rehearsal.Sittings());
    }

    private static PhoneFile Phone() =>
        new()
        {
            Practice = new PracticeProfile { PracticeId = Guid.NewGuid(), Name = "Larch House" },
            GivenName = "Ines",
            Units = HouseholdUnits.Metric,
            RaceId = Guid.NewGuid(),
            RaceName = "Harbour Marathon",
            RaceStart = new LocalDateTime(2027, 4, 18, 9, 0),
            Today = new LocalDate(2027, 4, 1),
            Plan = null,
            Rehearsals = [],
            IsNumberFree = false,
            MayWeigh = true,
        };
}
