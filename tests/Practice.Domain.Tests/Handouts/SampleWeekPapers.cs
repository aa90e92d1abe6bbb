using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Tests.Course;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;

namespace Practice.Domain.Tests.Handouts;

/// <summary>The papers of a race week, rendered once: the sample plan with its week and a course.</summary>
internal static class SampleWeekPapers
{
    private static readonly ConcurrentDictionary<string, byte[]> Rendered = new();

    private static readonly Dictionary<
        string,
        Func<RaceWeekPlan, Practices.PracticeProfile, HandoutOptions, HandoutDoc>
    > Kinds = new()
    {
        ["week"] = WeekHandout.Build,
        ["shopping"] = WeekHandout.ShoppingListOf,
        ["packing"] = WeekHandout.PackingListOf,
        ["card"] = RaceCard.Build,
    };

    /// <summary>Every kind for every reader: <c>week-full</c>, <c>card-number-free</c>.</summary>
    public static IEnumerable<string> All =>
        from kind in Kinds.Keys
        from reader in new[] { "full", "american", "number-free", "large-print", "draft" }
        select $"{kind}-{reader}";

    public static HandoutDoc Doc(string paper)
    {
        var (kind, reader) = (paper[..paper.IndexOf('-')], paper[(paper.IndexOf('-') + 1)..]);
        var sample = SamplePapers.All[reader];
        return Kinds[kind](Plan(sample), sample.Practice, sample.Options);
    }

    public static byte[] Pdf(string paper) =>
        Rendered.GetOrAdd(paper, p => HandoutPdf.Render(Doc(p)));

    public static RaceWeekPlan Plan(SamplePlan sample)
    {
        var plan = sample.Plan();
        var adjustments = new Adjustments { NumberFree = sample.NumberFree };
        var client = Client.Register(
            Guid.Empty,
            "Zoë",
            "Łukasz",
            new LocalDate(1990, 5, 17),
            new Physique
            {
                Sex = Sex.Female,
                HeightCm = 168,
                Vo2Max = 50,
            },
            new BodyMassEntry(new LocalDate(2026, 9, 1), BodyMass.OfKilograms(60))
        );
        client.LiveIn("America/New_York");
        var race = Race.Enter(
            Guid.Empty,
            client.Id,
            new RaceDetails
            {
                Name = plan.Header.RaceName,
                DistanceKm = 42.195m,
                Start = plan.Header.RaceStart,
                ZoneId = plan.Header.ZoneId,
                Weather = new ExpectedWeather(19, 65),
            }
        );
        var eve = plan.Header.RaceStart.Date.PlusDays(-1);
        var marathon = Marathon
            .In(225)
            .Take("gel", 7.5m)
            .Take("gel", 15)
            .Take("gel", 22.5m)
            .Take("gel", 30)
            .On(s => s with { });
        var drunk = Enumerable
            .Range(1, 7)
            .Aggregate(marathon, (m, i) => m.Take(i % 2 == 0 ? "drink" : "water", i * 5m));
        var withWeek = plan with
        {
            Week = WeekLayout.Of(plan, client, race, adjustments, new LocalDate(2026, 9, 7)),
            Course = drunk.Plan,
        };
        return withWeek
            .EditPart(RaceDayPart.Morning, p => Filled(p, sample, Breakfast))
            .EditPart(RaceDayPart.Recovery, p => Filled(p, sample, AfterTheFinish))
            .Travelling(eve, new Travel(new LocalTime(11, 0), new LocalTime(14, 30)))
            .Note(eve, "Collect the number at the harbour office. Rice bag, 250 g, is with you.")
            .Note(RaceDayPart.Morning, "The hotel opens the kitchen at five for you.")
            .Pack(Packing.Food, "Rice cooker, 1 kg of rice");
    }

    private static readonly ImmutableArray<string> Breakfast =
    [
        "white-toast 4, strawberry-jam 3, banana 2, orange-juice 4",
        "sports-drink-6 4",
    ];

    private static readonly ImmutableArray<string> AfterTheFinish =
    [
        "bagel 2, honey 1",
        "white-rice 8, chicken-breast 3, apple-juice 4",
        "rice-pudding 1, banana 2",
    ];

    private static RaceWeekPlan Filled(
        RaceWeekPlan plan,
        SamplePlan sample,
        ImmutableArray<string> plates
    ) =>
        plan.With(
            plan.Days[0] with
            {
                Occasions =
                [
                    .. plan.Days[0]
                        .Occasions.Zip(
                            plates,
                            (o, plate) =>
                                o with
                                {
                                    Portions = [.. plate.Split(", ").Select(sample.Serve)],
                                }
                        ),
                ],
            }
        );
}
