using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Debriefs;
using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Domain.Targets;

namespace Practice.Service.Demo;

/// <summary>
/// Twenty-four invented clients in every state a caseload knows. Names, races and stories are invented; days are
/// counted from today, so that the practice always looks alive.
/// </summary>
internal static class DemoCaseload
{
    private const string London = "Europe/London";
    private const string Athens = "Europe/Athens";
    private const string NewYork = "America/New_York";
    private const string Sofia = "Europe/Sofia";

    private static readonly LocalTime Nine = new(9, 0);
    private static readonly LocalTime HalfPastSeven = new(7, 30);

    private static ScreeningAnswers Healthy => Questionnaire.NothingToReport;

    private static Duration Time(int hours, int minutes) =>
        Duration.FromMinutes(60 * hours + minutes);

    private static RaceResult Half(int minutes) => new(21.0975m, Duration.FromMinutes(minutes));

    private static RaceResult Ten(int minutes) => new(10m, Duration.FromMinutes(minutes));

    private static DemoRace Harbour(int weekend) =>
        new("Saltmere Harbour Marathon", "Saltmere", London, 42.195m, weekend, Nine);

    private static DemoRace Valley(int weekend) =>
        new("Ottersby Mills Marathon", "Ottersby", London, 42.195m, weekend, new LocalTime(10, 0));

    private static DemoRace Olive(int weekend) =>
        new("Pelagiri Coast Marathon", "Pelagiri", Athens, 42.195m, weekend, HalfPastSeven);

    private static DemoRace Lakes(int weekend) =>
        new(
            "Marlow Falls Marathon",
            "Marlow Falls",
            NewYork,
            42.195m,
            weekend,
            new LocalTime(8, 0),
            true
        );

    private static DemoRace Ridge(int weekend) =>
        new("Stannock Ridge 50", "Stannock", London, 50m, weekend, new LocalTime(6, 30), true);

    private static DemoRace Quay(int weekend) =>
        new("Saltmere Quay Half", "Saltmere", London, 21.0975m, weekend, Nine);

    private static DemoRace Rose(int weekend) =>
        new("Damarovo Valley Marathon", "Damarovo", Sofia, 42.195m, weekend, Nine);

    /// <summary>Trouble whenever the food that brings most carbohydrate between meals was on the plate.</summary>
    private static ImmutableArray<DemoRehearsal> SixTrials =>
        [
            Trial(-12, 6, "Cramps from half way on."),
            Trial(-10, 1, "Good legs, quiet stomach.", 0, 2),
            Trial(-8, 5, "Cramps again, later this time.", 2),
            Trial(-6, 0, "Nothing to report.", 0),
            Trial(-3, 1, "Fine.", 0, 1),
            Trial(-1, 7, "All of it again as asked. Cramps at 20 km, walked two kilometres.") with
            {
                Decided = null,
            },
        ];

    private static DemoRehearsal Trial(int weeks, int score, string note, params int[] left) =>
        new(RehearsalKind.Full, weeks)
        {
            Worst = (SymptomItem.UpperPain, score),
            Left = [.. left],
            RunMinutes = 125,
            RunKm = 30,
            FuelG = 150,
            Note = note,
            Decided = (
                TrialVerdicts.OfPeak(score, SymptomThresholds.House),
                score > 4 ? "Leave one thing out next time." : "Keep it so, put one thing back."
            ),
        };

    private static DebriefReport GoodRace =>
        new()
        {
            FinishTime = Time(3, 14),
            LoadingEaten = TakenShare.AsPlanned,
            CourseTaken = TakenShare.AsPlanned,
            TakenGPerHour = 68,
            WorstGut = 1,
            Weather = new ExpectedWeather(9, 70),
            NextTime = "The same again. One gel more after 30 km, rehearsed first.",
        };

    private static DebriefReport Wall =>
        new()
        {
            FinishTime = Time(3, 47),
            LoadingEaten = TakenShare.Half,
            CourseTaken = TakenShare.Half,
            TakenGPerHour = 29,
            WorstGut = 2,
            Symptoms = "None to speak of.",
            Wall = WallFelt.Wall,
            WallKm = 32.5m,
            Weather = new ExpectedWeather(13, 65),
            NextTime =
                "The day of travel had half its rice: pack it. Feed from 5 km on by the watch, not by hunger.",
        };

    private static DebriefReport GutTrouble =>
        new()
        {
            FinishTime = Time(5, 2),
            LoadingEaten = TakenShare.AsPlanned,
            CourseTaken = TakenShare.Half,
            TakenGPerHour = 33,
            WorstGut = 7,
            Symptoms = "Cramps and urgency from 24 km, two stops; nothing went down after 32 km.",
            Wall = WallFelt.Slowed,
            WallKm = 32,
            Weather = new ExpectedWeather(23, 60),
            NextTime =
                "Low FODMAP on the last two days. Begin at 30 g/h from glucose alone, sips at every station, rehearse twice.",
        };

    public static ImmutableArray<DemoClient> Clients(LocalDate today) =>
        [
            // this weekend
            new("Maren", "Holloway", Sex.Female, 34, 168, 58.5m, Harbour(0), Time(3, 25))
            {
                SweatTests =
                [
                    new(146, 1.3m, 0.4m, 80, 15) { Weather = (24, 55) },
                    new(19, 0.8m, 0.3m, 75, 14.5m) { Weather = (9, 75) },
                ],
                Forecast = new ExpectedWeather(8, 80),
                RecentResult = Half(97),
                WeeklyKm = 64,
                Plan = DemoPlan.Issued,
                Tastes = Tastes.Unknown with
                {
                    Likes = ["white-rice", "banana", "bagel", "honey"],
                    Tolerated = ["bagel", "white-rice", "orange-juice"],
                },
                Notes = "Third marathon. Went out too fast last time.",
            },
            new("Tomas", "Reyes-Lind", Sex.Male, 41, 181, 76m, Harbour(0), Time(3, 5))
            {
                // in other heat than the race will have: stale
                SweatTests = [new(138, 2.1m, 0.5m, 75, 16.5m) { Weather = (26, 60) }],
                Forecast = new ExpectedWeather(8, 80),
                Vo2Max = 56,
                WeeklyKm = 80,
                Plan = DemoPlan.Issued,
                Choices = new LoadingChoices { WindowHours = 48 },
            },
            new("Ελένη", "Παπαδάκη", Sex.Female, 29, 163, 54m, Olive(0), Time(3, 40))
            {
                Home = Athens,
                RecentResult = Half(104),
                WeeklyKm = 55,
                Plan = DemoPlan.Draft,
                Diet = new Diet { Pattern = DietPattern.Vegetarian },
            },
            // a hold, with the race close
            new("Callum", "Ashdown", Sex.Male, 38, 178, 82m, Harbour(0), Time(3, 50))
            {
                WeeklyKm = 48,
                RecentResult = Half(110),
                Answers = Healthy
                    .With(Diabetes.Kind, Diabetes.Type1)
                    .With(Medicines.Taken, Medicines.Insulin),
                Notes = "Type 1 diabetes, wears a sensor. Waiting for the clinic's letter.",
            },
            // next weekend
            new("Priya", "Venkataraman", Sex.Female, 36, 160, 56m, Valley(1), Time(3, 55))
            {
                RecentResult = Half(112),
                WeeklyKm = 50,
                Diet = new Diet { Pattern = DietPattern.Vegan },
                Tastes = Tastes.Unknown with
                {
                    Likes = ["idli", "dosa", "basmati"],
                    Dislikes = ["cola"],
                },
                Plan = DemoPlan.Draft,
            },
            new("Owen", "Tregarth", Sex.Male, 45, 175, 71m, Valley(1), Time(3, 30))
            {
                RecentResult = Half(101),
                WeeklyKm = 58,
                Answers = Healthy
                    .WithYes(FoodAndTheBody.Coeliac)
                    .With(FoodAndTheBody.CertifiedOats, Choice.No),
                Plan = DemoPlan.Draft,
                Choices = new LoadingChoices { WindowHours = 48 },
                Notes = "Coeliac disease, diagnosed at school.",
                Rehearsals =
                [
                    new(RehearsalKind.Full, -1)
                    {
                        Worst = (SymptomItem.Nausea, 4),
                        Left = [0],
                        RunMinutes = 140,
                        RunKm = 25,
                        FuelG = 120,
                        Note =
                            "Could not face the sweet drink in the afternoon. Queasy for a while at 17 km, then fine.",
                    },
                ],
            },
            new("Иван", "Петков", Sex.Male, 52, 179, 84m, Rose(1), Time(4, 10))
            {
                Home = Sofia,
                RecentResult = Half(118),
                WeeklyKm = 42,
                Answers = Healthy.With(
                    HeartAndKidneys.BloodPressure,
                    HeartAndKidneys.ControlledPressure
                ),
            },
            new("Bethan", "Morcroft", Sex.Female, 31, 171, 62m, Valley(1), Time(3, 15))
            {
                // more than a year before the race, and nobody wrote the weather down
                SweatTests = [new(402, 0.9m, 0.2m, 70, 14)],
                Vo2Max = 54,
                WeeklyKm = 75,
                Plan = DemoPlan.Issued,
                Answers = Healthy.With(EatingAndEnergy.EatingDisorder, EatingAndEnergy.InThePast),
                Notes = "Prefers no numbers on paper.",
            },
            // two to five weeks out
            new("Joaquín", "Ferrer", Sex.Male, 27, 184, 73m, Olive(2), Time(2, 48))
            {
                Vo2Max = 64,
                WeeklyKm = 110,
                Choices = new LoadingChoices { CarbohydrateGPerKg = 11, WindowHours = 48 },
                Plan = DemoPlan.Draft,
                Rehearsals = SixTrials,
                Notes = "Two autumns of stomach trouble. Six trials, one change at a time.",
            },
            new("Sadie", "Okonkwo", Sex.Female, 39, 165, 67m, Harbour(2), Time(4, 20))
            {
                RecentResult = Half(124),
                WeeklyKm = 40,
                Answers = Healthy.With(FoodAndTheBody.Lactose, FoodAndTheBody.SomeLactose),
                Plan = DemoPlan.Draft,
                Rehearsals =
                [
                    new(RehearsalKind.Full, -1)
                    {
                        Worst = (SymptomItem.UpperBloating, 6),
                        Supper = 0.5m,
                        RunMinutes = 165,
                        RunKm = 24,
                        FuelG = 95,
                        Note =
                            "Felt full from the evening on and could not finish supper. Stomach cramped at 18 km.",
                    },
                ],
            },
            new("Henrik", "Aaltonen", Sex.Male, 48, 186, 90m, Ridge(2), Time(6, 15))
            {
                RecentResult = new RaceResult(42.195m, Time(4, 2)),
                WeeklyKm = 65,
            },
            new("Noor", "Haddad", Sex.Female, 33, 162, 59m, Lakes(3), Time(3, 48))
            {
                RecentResult = Ten(49),
                WeeklyKm = 52,
                Diet = new Diet { Refused = FoodTraits.Pork | FoodTraits.Alcohol },
                Units = HouseholdUnits.UsCustomary,
                Plan = DemoPlan.Draft,
                Rehearsals =
                [
                    new(RehearsalKind.Partial, -1)
                    {
                        Worst = (SymptomItem.Dizziness, 4),
                        Sign = WarningSign.Collapse,
                        RunMinutes = 95,
                        RunKm = 17,
                        FuelG = 40,
                        Note = "Everything went dark at 17 km and I sat down by the road.",
                    },
                ],
            },
            new("Grace", "Whitlam", Sex.Female, 26, 170, 61m, Harbour(3), Time(3, 35))
            {
                RecentResult = Half(100),
                WeeklyKm = 60,
                Diet = new Diet { Allergies = [Allergen.Peanuts, Allergen.TreeNuts] },
                Plan = DemoPlan.Draft,
                Rehearsals = [new(RehearsalKind.Full, 0)],
            },
            new("Dmitri", "Sorokin", Sex.Male, 35, 177, 69m, Lakes(3), Time(2, 59))
            {
                Home = NewYork,
                Vo2Max = 60,
                WeeklyKm = 95,
                Units = HouseholdUnits.UsCustomary,
                Tastes = Tastes.Unknown with
                {
                    Likes = ["mash", "white-bread"],
                    Suspect = ["apple-juice"],
                },
                Plan = DemoPlan.Draft,
                Rehearsals =
                [
                    new(RehearsalKind.Partial, -3)
                    {
                        Worst = (SymptomItem.Belching, 1),
                        Note = "Went down easily.",
                        Decided = (
                            TrialVerdict.Pass,
                            "Clean at three quarters: on to the full one."
                        ),
                    },
                    new(RehearsalKind.Full, -1)
                    {
                        Worst = (SymptomItem.Nausea, 4),
                        Left = [1],
                        RunMinutes = 130,
                        RunKm = 28,
                        FuelG = 150,
                        Note = "A bit queasy in the last third. Did not fancy the second drink.",
                    },
                ],
            },
            new("Amara", "Diallo", Sex.Female, 42, 167, 64m, Valley(4), Time(4, 5))
            {
                RecentResult = Half(117),
                WeeklyKm = 45,
                Answers = Healthy.With(Medicines.Taken, Medicines.Sglt2Inhibitor),
            },
            new("Piotr", "Zalewski", Sex.Male, 30, 183, 78m, Valley(4), Time(3, 20))
            {
                RecentResult = Half(95),
                WeeklyKm = 70,
                Diet = new Diet { Allergies = [Allergen.Milk] },
                Plan = DemoPlan.Draft,
            },
            new("Lucy", "Farnham", Sex.Female, 17, 166, 57m, Quay(4), Time(1, 45))
            {
                WeeklyKm = 35,
                RecentResult = Ten(47),
                Notes = "Under 18: guardian's consent and sign-off needed.",
            },
            // further out
            new("Kwame", "Boateng", Sex.Male, 37, 180, 74m, Harbour(6), Time(3, 10))
            {
                Past = new(Valley(-21), GoodRace),
                RecentResult = Half(90),
                WeeklyKm = 85,
            },
            new("Ingrid", "Solheim", Sex.Female, 50, 169, 66m, Olive(7), Time(4, 30))
            {
                Past = new(Olive(-28), GutTrouble),
                RecentResult = Half(128),
                WeeklyKm = 38,
                Answers = Healthy.WithYes(Gut.IrritableBowel).WithYes(Gut.LowFodmapSuits),
            },
            new("Rafael", "Montoro", Sex.Male, 44, 174, 95m, Lakes(8), Time(4, 45))
            {
                Home = NewYork,
                RecentResult = Half(132),
                WeeklyKm = 36,
                BodyFatPercent = 31,
                Units = HouseholdUnits.UsCustomary,
            },
            new("Mei-Lin", "Zhao", Sex.Female, 32, 158, 50m, Rose(9), Time(3, 18))
            {
                Past = new(Rose(-26), Wall),
                Vo2Max = 55,
                WeeklyKm = 78,
                Tastes = Tastes.Unknown with { Likes = ["jasmine", "rice-noodles"] },
            },
            new("Stella", "Brandt", Sex.Female, 28, 172, 63m, Harbour(10), Time(3, 45))
            {
                RecentResult = Half(106),
                WeeklyKm = 50,
                Answers = null,
                Notes = "Screening sent, not answered yet.",
            },
            // just run
            new("George", "Pemberley", Sex.Male, 46, 182, 79m, Harbour(-1), Time(3, 40))
            {
                RecentResult = Half(103),
                WeeklyKm = 55,
                Plan = DemoPlan.Issued,
            },
            new("Yusuf", "Karaca", Sex.Male, 33, 176, 68m, Valley(-1), Time(3, 0))
            {
                RecentResult = Half(86),
                WeeklyKm = 88,
                Plan = DemoPlan.Issued,
                Answers = Healthy.With(Diabetes.Kind, Diabetes.Prediabetes),
            },
        ];
}
