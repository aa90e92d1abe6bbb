using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Practices.Brand;
using Practice.Service.Privacy;
using Practice.Service.Races;
using Practice.Service.Screening;
using Practice.TestSupport;

namespace Practice.Store.Tests.Attacks;

/// <summary>
/// What people and programs type: nothing, far too much, half characters, unseen ones, days to come, masses below zero.
/// Each is taken or refused with words; none breaks anything.
/// </summary>
public class BadInputTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const int Inputs = 10_000;

    private static readonly string[] Texts =
    [
        "",
        " ",
        "\0",
        "a\0b",
        "\u0007bell",
        "two\nlines",
        "half \ud83d",
        "\udc00half",
        "🍚🏃‍♀️",
        "=cmd|' /C calc'!A0",
        "'; drop table client; --",
        "<script>alert(1)</script>",
        "Łukasz",
        "\u202Eright to left",
        new('x', 100),
        new('x', 10_000),
        "70 kg",
    ];

    private static readonly decimal?[] Numbers =
    [
        null,
        0,
        -1,
        -70,
        25,
        50,
        70,
        170,
        300,
        1_000_000,
        0.0001m,
        decimal.MaxValue,
        decimal.MinValue,
    ];

    private static readonly LocalDate[] Days =
    [
        LocalDate.MinIsoValue,
        new(1850, 1, 1),
        new(1990, 5, 4),
        new(2027, 4, 1),
        new(2030, 1, 1),
        LocalDate.MaxIsoValue,
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Owner => practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task Ten_thousand_bad_inputs_are_taken_or_refused_with_words()
    {
        var client = await practice.NewClient();
        var random = new Random(20270401);
        var faults = new HashSet<string>();
        var (taken, refused) = (0, 0);
        for (var i = 0; i < Inputs; i++)
        {
            var (name, run) = Ask(random, client);
            try
            {
                await run();
                taken++;
            }
            catch (ArgumentException e)
            {
                refused++;
                if (!e.Message.Contains(' ', StringComparison.Ordinal) || e.Message.Length > 300)
                    faults.Add($"{name} refused without words: {e.Message}");
            }
            catch (Exception e)
            {
                faults.Add(
                    $"{name} broke: {e.GetType().Name}: {e.InnerException?.Message ?? e.Message}"
                );
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Take(30)));
        Assert.True(taken > 50, $"only {taken} taken");
        Assert.True(refused > 5000, $"only {refused} refused");
    }

    private (string Name, Func<Task> Run) Ask(Random random, Guid client)
    {
        string Text() => Texts[random.Next(Texts.Length)];
        decimal? Number() => Numbers[random.Next(Numbers.Length)];
        LocalDate Day() => Days[random.Next(Days.Length)];
        return random.Next(7) switch
        {
            0 or 1 => (
                "register",
                () =>
                    practice
                        .Get<RegisterClient>()
                        .Run(
                            Owner,
                            new ClientDetails
                            {
                                GivenName = Text(),
                                FamilyName = Text(),
                                Email = Text(),
                                BirthDate = Day(),
                                Physique = new Physique
                                {
                                    Sex = Sex.Female,
                                    HeightCm = Number() ?? 170,
                                    BodyFatPercent = Number(),
                                    Vo2Max = Number(),
                                },
                                Diet = Diet.Unrestricted with { OtherAllergy = Text() },
                                Notes = Text(),
                            },
                            new BodyMassEntry(Day(), BodyMass.OfKilograms(Number() ?? 70)),
                            Cancel
                        )
            ),
            2 => (
                "race",
                () =>
                    practice
                        .Get<EnterRace>()
                        .Run(
                            Owner,
                            client,
                            new RaceDetails
                            {
                                Name = Text(),
                                Place = Text(),
                                DistanceKm = Number() ?? 42,
                                Start = Day().At(LocalTime.Noon),
                                ZoneId = random.Next(3) == 0 ? Text() : "Europe/London",
                            },
                            Cancel
                        )
            ),
            3 => (
                "screening",
                () =>
                    practice
                        .Get<AnswerScreening>()
                        .Run(
                            Owner,
                            client,
                            new ScreeningAnswers
                            {
                                Given = ImmutableDictionary<
                                    string,
                                    ImmutableArray<string>
                                >.Empty.Add(Text(), [Text()]),
                            },
                            Cancel
                        )
            ),
            4 => (
                "brand",
                async () =>
                {
                    var details = new BrandDetails
                    {
                        Name = Text(),
                        Accent = random.Next(2) == 0 ? Text() : "#7A3E9D",
                        Footer = Text(),
                        RegistrationLine = Text(),
                    };
                    // refused before anything is asked of the database
                    details.ApplyTo(new PracticeProfile { PracticeId = Guid.Empty, Name = "x" });
                    var onFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!;
                    await practice.Get<SetBrand>().Run(Owner, onFile, details, [], Cancel);
                }
            ),
            5 => (
                "food",
                async () =>
                {
                    var sheet = SampleFood.Bar with
                    {
                        Name = Text(),
                        UsName = Text(),
                        Family = random.Next(2) == 0 ? Text() : null,
                        Per100G = SampleFood.Bar.Per100G with
                        {
                            EnergyKcal = Number(),
                            CarbohydrateG = Number(),
                            SodiumMg = Number(),
                            WaterG = Number(),
                        },
                        Serving = SampleFood.Bar.Serving with
                        {
                            Style = (ServingStyle)random.Next(3),
                            Unit = Text(),
                            UnitPlural = Text(),
                            Grams = Number(),
                            Least = Number(),
                            Most = Number(),
                        },
                        Source = Text(),
                    };
                    if (await practice.Get<KeepFood>().Run(Owner, sheet, Cancel) is FoodRefused no)
                        throw new ArgumentException(no.Faults[0].Text);
                }
            ),
            _ => ("hold", () => Task.FromResult(LegalHold.For(Text(), Day(), "Pat"))),
        };
    }
}
