using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Store.Tests;

/// <summary>Valid things of an invented practice. No field of a document is left at its default.</summary>
internal static class Sample
{
    public static Instant Now { get; } = Instant.FromUtc(2026, 9, 1, 8, 30);

    private static Source Source { get; } = new("sample", "Invented for tests", Provenance.OwnRule);

    public static PracticeProfile Practice(string name = "Larch House") =>
        new()
        {
            PracticeId = Guid.CreateVersion7(),
            Name = name,
            Accent = "#334455",
            LogoPng = [137, 80, 78, 71],
            Footer = "1 Larch Lane",
            RegistrationLine = "Registered with nobody",
            Paper = PaperSize.Letter,
            Units = HouseholdUnits.UsCustomary,
        };

    public static AuditEntry Audit(Guid practiceId, string what = "tested", Guid? about = null) =>
        new()
        {
            PracticeId = practiceId,
            At = Now,
            By = "A. Tester",
            What = what,
            About = about,
        };

    public static Client Client(Guid practiceId, string given = "Ida", string family = "Okafor")
    {
        var client = Domain.Clients.Client.Register(
            practiceId,
            given,
            family,
            new LocalDate(1990, 5, 17),
            new Physique
            {
                Sex = Sex.Female,
                HeightCm = 168.5m,
                BodyFatPercent = 21.5m,
                Vo2Max = 48.2m,
                RecentResult = new RaceResult(
                    21.0975m,
                    Duration.FromMinutes(104),
                    new LocalDate(2026, 4, 12)
                ),
                WeeklyKm = 55,
            },
            new BodyMassEntry(new LocalDate(2026, 8, 1), BodyMass.OfKilograms(61.40m))
        );
        client.Restrict(
            new Diet
            {
                Pattern = DietPattern.Vegetarian,
                Allergies = [Allergen.Peanuts, Allergen.Sesame],
                Refused = FoodTraits.Alcohol | FoodTraits.Pork,
                OtherAllergy = "kiwi",
                Kitchen = [KitchenLimit.NoFridge],
            }
        );
        client.Prefer(
            new Tastes
            {
                Likes = ["white-rice-boiled", "banana"],
                Dislikes = ["raisins"],
                Tolerated = ["bagel-plain"],
                Suspect = ["apple-juice"],
            }
        );
        return client;
    }

    public static ScreeningRecord Screening(Client client)
    {
        var answers = new ScreeningAnswers
        {
            Given = ImmutableDictionary<string, ImmutableArray<string>>
                .Empty.Add("kidney", ["no"])
                .Add("diabetes", ["insulin", "pump"]),
        };
        var screening = ScreeningRecord.Take(
            client.PracticeId,
            client.Id,
            answers,
            new LocalDate(2026, 8, 1)
        );
        screening.Clear(
            new Clearance(
                "diabetes-insulin",
                "Dr Invented",
                "physician",
                new LocalDate(2026, 8, 20),
                new LocalDate(2027, 2, 20),
                "May load with a doctor's dosing plan."
            )
        );
        return screening;
    }

    public static Race Race(Client client, LocalDate? day = null) =>
        Domain.Races.Race.Enter(
            client.PracticeId,
            client.Id,
            new RaceDetails
            {
                Name = "Harbour Marathon",
                Place = "Invented Harbour",
                Discipline = Discipline.RoadRunning,
                DistanceKm = 42.195m,
                Start = (day ?? new LocalDate(2026, 10, 11)) + new LocalTime(9, 15),
                ZoneId = "Europe/London",
                GoalTime = Duration.FromMinutes(225),
                Weather = new ExpectedWeather(14.5m, 70),
            }
        );

    public static PlanVersion Draft(Race race, int number = 1) =>
        PlanVersion.Draft(race.PracticeId, race.Id, number, Plan(), "First version", Now);

    public static RaceWeekPlan Plan() =>
        new()
        {
            Header = new PlanHeader
            {
                ClientName = "Ida Okafor",
                BodyMass = BodyMass.OfKilograms(61.40m),
                RaceName = "Harbour Marathon",
                RacePlace = "Invented Harbour",
                DistanceKm = 42.195m,
                RaceStart = new LocalDateTime(2026, 10, 11, 9, 15),
                ZoneId = "Europe/London",
            },
            Choices = new LoadingChoices
            {
                CarbohydrateGPerKg = 9.5m,
                WindowHours = 48,
                OccasionsPerDay = 7,
                Sittings = DayShape.Of(7),
                DrinksShare = 0.25m,
                Overrides =
                [
                    new TargetOverride("fibre", 12, 15, "A. Tester", Now, "Sensitive gut"),
                ],
            },
            Targets = Targets(),
            Days = [Day(new LocalDate(2026, 10, 9), 2), Day(new LocalDate(2026, 10, 10), 1)],
            Style = MenuStyle.Repeat,
            Units = HouseholdUnits.UsCustomary,
            Fluids = new FluidAdvice("Drink with meals", "Salt as usual"),
            Cautions = [new Caution("label", "Read the label.", true, Source)],
            NumberFree = true,
            Why = "To start with full stores.",
            Note = "Keep it simple.",
            Course = SampleCourse.Of(Target),
            Week = SampleWeek.Around(
                Day(new LocalDate(2026, 10, 11), 1),
                Day(new LocalDate(2026, 10, 11), 2)
            ),
        };

    private static PlanDay Day(LocalDate date, int daysBefore) =>
        new()
        {
            Date = date,
            DaysBefore = daysBefore,
            Share = 0.75m,
            Limits = new DayLimits
            {
                CarbohydrateAimG = 583.3m,
                CarbohydrateTolerance = 0.03m,
                OccasionTolerance = 0.2m,
                FibreMaxG = 15,
                FatMaxG = 60,
                FatMaxEnergyShare = 0.2m,
                ProteinMinG = 60,
                ProteinMaxG = 110,
                DrinksShareMin = 0.1m,
                DrinksShareAim = 0.2m,
                DrinksShareMax = 0.3m,
                SugaryShareMax = 0.4m,
                SodiumMinMg = 2000,
                SodiumMaxMg = 5000,
                FructoseMaxPerOccasionG = 40,
                LactoseMaxPerOccasionG = 6,
                LactoseMaxPerDayG = 12,
                OccasionWeightMaxG = 900,
            },
            Occasions =
            [
                new Occasion
                {
                    Kind = OccasionKind.Breakfast,
                    Time = new LocalTime(7, 30),
                    CarbohydrateAimG = 120.5m,
                    Pattern = "bread and drink",
                    Portions = [Portion("bagel-plain"), Portion("grape-juice")],
                },
            ],
        };

    private static Portion Portion(string foodId) =>
        new()
        {
            FoodId = foodId,
            Name = foodId,
            Role = MealRole.Bread,
            Group = FoodGroup.Cereal,
            Steps = 2,
            Serving = new Serving
            {
                Style = ServingStyle.Weighed,
                StepGrams = 52.5m,
                UnitsPerStep = 0.5m,
                Unit = "bagel",
                UnitPlural = "bagels",
                UsUnit = "large bagel",
                UsUnitPlural = "large bagels",
                Steps = [1, 2, 4],
                Measures =
                [
                    new HouseholdMeasure(
                        "cup",
                        "cups",
                        80,
                        HouseholdUnits.UsCustomary,
                        IsOwn: true
                    ),
                ],
            },
            Per100G = new Nutrients
            {
                EnergyKcal = 264,
                CarbohydrateG = 50.9m,
                SugarsG = 5.15m,
                GlucoseG = 1.1m,
                FructoseG = 1.2m,
                SucroseG = 0.3m,
                LactoseG = 0.4m,
                FibreG = 2.3m,
                ProteinG = 10.5m,
                FatG = 1.6m,
                SodiumMg = 448,
                PotassiumMg = 95,
                WaterG = 36.2m,
                CaffeineMg = 0.10m,
            },
            IsLiquid = true,
            IsLocked = true,
        };

    private static LoadingTargets Targets() =>
        new()
        {
            Loads = true,
            CarbohydrateRate = Target("rate"),
            CarbohydratePerDay = Target("carbohydrate"),
            CarbohydrateTotal = Target("total"),
            Energy = Target("energy"),
            Protein = Target("protein"),
            Fat = Target("fat"),
            Fibre = Target("fibre"),
            DrinksShare = Target("drinks"),
            Fluid = Target("fluid"),
            Sodium = Target("sodium"),
            FructosePerOccasion = Target("fructose"),
            BodyMassGain = Target("gain"),
            Benefit = Target("benefit"),
            ExpectedFinish = Target("finish"),
            Glycogen = [new GlycogenPoint(0, 110.5m, 90, 130), new GlycogenPoint(1, 112, 91, 133)],
        };

    private static Target Target(string key) =>
        new()
        {
            Key = key,
            Name = $"Name of {key}",
            Aim = 9.50m,
            Low = 8,
            High = 12,
            Unit = "g/kg/day",
            Decimals = 1,
            Basis = new Basis(
                "mass × rate",
                [new BasisInput("Body mass", "61.4 kg")],
                [Source],
                "An estimate"
            ),
            Override = new TargetOverride(key, 9, 9.5m, "A. Tester", Now, "Agreed with her"),
        };
}
