using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Domain.Tests.Targets;
using Practice.Handouts;

namespace Practice.Domain.Tests.Handouts;

/// <summary>A plan that can be eaten, with invented people and races; tests change one fact.</summary>
internal sealed record SamplePlan
{
    private static readonly LocalDate IssuedOn = new(2026, 9, 7);

    /// <summary>Two menus of about 600 g: food and steps for each sitting.</summary>
    private static readonly ImmutableArray<ImmutableDictionary<OccasionKind, string>> Menus =
    [
        Menu(
            "corn-flakes 4, milk-skimmed 4, white-toast 3, strawberry-jam 2, orange-juice 4",
            "bagel 2, honey 1, sports-drink-6 6",
            "white-rice 8, chicken-breast 3, teriyaki-glaze 2, carrots 2, apple-juice 4",
            "rice-cakes 5, apricot-jam 2, banana 2",
            "white-pasta 5, tomato-sauce 3, cod 3, pineapple-tinned 2",
            "rice-pudding 1, rich-tea 1"
        ),
        Menu(
            "cream-of-rice 6, milk-skimmed 5, maple-syrup 2, white-toast 2, marmalade 1, grape-juice 3",
            "pretzels 4, carb-mix 8",
            "gnocchi 6, passata-sauce 3, soft-roll 1, turkey-slices 2, peach-nectar 3",
            "crumpet 2, golden-syrup 2, sports-drink-6 6",
            "jasmine 5, prawns 3, sweet-chilli 2, courgette 1",
            "yoghurt-fruit 1, rich-tea 1"
        ),
    ];

    private const string WhyInWords =
        "Your muscles store the fuel you race on. In these days you fill that store, so that it lasts further into "
        + "the race. Foods are soft and low in fibre on purpose, which keeps the gut quiet.";

    private const string Why =
        WhyInWords
        + " A full day brings 600 g of carbohydrate: more early, less in the evening. Expect to weigh a little "
        + "more: it is fuel and water, not fat.";

    private static readonly FluidAdvice Fluids = new(
        "Drink to thirst, and have one or two small glasses more than usual spread over the day: stored carbohydrate "
            + "takes water with it. Pale yellow urine is right; clear water all day is too much.",
        "Salt your food as you normally would, perhaps a pinch more. Salt does not protect against drinking too much."
    );

    private static readonly ImmutableArray<Caution> Cautions =
    [
        Say(
            "Your doctor and your care team come first: where they say something else, follow them."
        ),
        Say(
            "This is advice on food and drink. It does not diagnose or treat any illness. If you feel unwell, stop and "
                + "ask."
        ),
        Say(
            "Take no anti-inflammatory painkillers before, during or soon after the race unless your doctor has told "
                + "you to."
        ),
    ];

    public string Client { get; init; } = "Zoë Łukasz";
    public string Race { get; init; } = "Saltmarsh Coast Marathon";
    public int WindowHours { get; init; } = 36;
    public HouseholdUnits Units { get; init; }
    public bool NumberFree { get; init; }
    public string Note { get; init; } =
        "You told me rice sits best, so lunch on both days is built on it. If the second snack feels too "
        + "much, drink it instead: the bottle counts the same. See you at the start!";

    public PracticeProfile Practice { get; init; } =
        new()
        {
            PracticeId = Guid.Empty,
            Name = "Fernhollow Performance Kitchen",
            RegistrationLine = "Registered sports nutritionist, no. 48213",
            Footer = "4 Quay Lane, Saltmarsh · 01632 960 147",
            LogoPng = [.. SampleLogo.Png.Span],
        };

    public HandoutOptions Options { get; init; } =
        new()
        {
            Version = 3,
            IssuedOn = IssuedOn,
            IssuedBy = "Mara Lindqvist-Hale",
            Today = IssuedOn,
        };

    public RaceWeekPlan Plan()
    {
        var choices = new LoadingChoices { WindowHours = WindowHours };
        var athlete = Athlete.LightWoman with { MassKg = 60, Choices = choices };
        var targets = athlete.Targets();
        var mass = BodyMass.OfKilograms(60);
        var header = new PlanHeader
        {
            ClientName = Client,
            BodyMass = mass,
            RaceName = Race,
            RacePlace = "Saltmarsh",
            DistanceKm = 42.195m,
            RaceStart = new LocalDateTime(2026, 9, 13, 8, 30),
            ZoneId = "Europe/London",
        };
        var adjustments = Adjustments.None with { NumberFree = NumberFree };
        var days = LoadingLayout.Days(header.RaceStart, mass, choices, targets, adjustments);
        return new()
        {
            Header = header,
            Choices = choices,
            Targets = targets,
            Days = [.. days.Select((d, i) => Fill(d, (days.Length - i - 1) % Menus.Length))],
            Units = Units,
            Fluids = Fluids,
            Cautions = Cautions,
            NumberFree = NumberFree,
            Why = NumberFree ? WhyInWords : Why,
            Note = Note,
        };
    }

    private static Caution Say(string text) =>
        new("sample", text, ForClient: true, new("sample", "", Provenance.CommonPractice));

    private PlanDay Fill(PlanDay day, int menu) =>
        day with
        {
            Occasions =
            [
                .. day.Occasions.Select(o =>
                    o with
                    {
                        Portions = [.. Menus[menu][o.Kind].Split(", ").Select(Serve)],
                    }
                ),
            ],
        };

    internal Portion Serve(string foodAndSteps)
    {
        var (id, steps) = (foodAndSteps.Split(' ')[0], foodAndSteps.Split(' ')[1]);
        var food = FoodLibrary.Standard.Find(id)!;
        return Portion.Of(
            food,
            food.Roles[0].Role,
            int.Parse(steps, System.Globalization.CultureInfo.InvariantCulture),
            Units
        );
    }

    private static ImmutableDictionary<OccasionKind, string> Menu(params string[] sittings) =>
        new[]
        {
            OccasionKind.Breakfast,
            OccasionKind.MorningSnack,
            OccasionKind.Lunch,
            OccasionKind.AfternoonSnack,
            OccasionKind.EveningMeal,
            OccasionKind.Supper,
        }
            .Zip(sittings)
            .ToImmutableDictionary(p => p.First, p => p.Second);
}
