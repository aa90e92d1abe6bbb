using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Domain.Quantities;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>One day: what to eat and drink at every sitting.</summary>
internal static class DayPart
{
    public static IEnumerable<Block> Blocks(PlanDay day, RaceWeekPlan plan, Reader reader)
    {
        string Name(Occasion o) =>
            Sittings.Name(o.Kind, reader.Units) + AtHome(day, o, plan, reader);
        if (day.Occasions.IsEmpty)
            return [];
        var shown = DisplayTotals.Of(day);
        var title = new BlockColumn(
            1.15,
            [
                new Heading(2, reader.Dates.Day(day.Date)),
                new Paragraph(Place(day, plan), IsQuiet: true),
                .. Sum(day, shown, reader),
            ]
        );
        var head = reader.IsNumberFree
            ? new SideBySide([title], KeepWithNext: true)
            : new SideBySide([title, new(1, [Chart(day, shown, reader)])], KeepWithNext: true);
        return
        [
            new Together([head, Menu(day, shown, reader, Name)]),
            new NoteLines("Notes: what sat well, and what you would change"),
        ];
    }

    /// <summary>What to eat and drink at each sitting, as a table alone: for the meals of the race day.</summary>
    public static Table Menu(
        PlanDay day,
        RaceWeekPlan plan,
        Reader reader,
        Func<Occasion, string> name
    ) =>
        Menu(day, DisplayTotals.Of(day), reader, o => name(o) + AtHome(day, o, plan, reader))
            is var menu
        && menu.Total is { } total
            ? menu with
            {
                Total = total with { Label = "Together" },
            }
            : menu;

    /// <summary>The clock at home, for a client who lives in another zone: <c> (01:00 at home)</c>.</summary>
    private static string AtHome(
        PlanDay day,
        Occasion occasion,
        RaceWeekPlan plan,
        Reader reader
    ) =>
        BothClocks.Of(plan, day.MomentOf(occasion)).AtHome is { } home
            ? $" ({reader.Dates.Time(home.TimeOfDay)} at home)"
            : "";

    private static ImmutableArray<Block> Sum(PlanDay day, DisplayDay shown, Reader reader)
    {
        if (reader.IsNumberFree)
            return [];
        var sittings = KitchenNumber.Phrase(day.Occasions.Length, "sitting", "sittings");
        return
        [
            new Paragraph(
                Words.Of(
                    new Run($"{shown.CarbohydrateG}\u00A0g carbohydrate", RunStyle.Strong),
                    new Run($" in {sittings}")
                )
            ),
        ];
    }

    /// <summary>Where the day stands: <c>The day before the race. Loading day 2 of 2.</c></summary>
    private static string Place(PlanDay day, RaceWeekPlan plan)
    {
        var before = day.DaysBefore switch
        {
            0 => "Race day",
            1 => "The day before the race",
            var days => $"{Capital(KitchenNumber.Words(days))} days before the race",
        };
        var number = plan.Days.IndexOf(day) + 1;
        return plan.Days.Length == 1
            ? $"{before}."
            : $"{before}. Loading day {number} of {plan.Days.Length}.";
    }

    private static BarChart Chart(PlanDay day, DisplayDay shown, Reader reader)
    {
        ImmutableArray<Bar> bars =
        [
            .. day.Occasions.Select(
                (o, i) =>
                    new Bar(
                        Sittings.ShortName(o.Kind, reader.Units),
                        shown.Occasions[i].CarbohydrateG,
                        Apportion.Whole(o.CarbohydrateAimG)
                    )
            ),
        ];
        var each = day.Occasions.Select(
            (o, i) =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Sittings.Name(o.Kind, reader.Units)} {bars[i].Value} of {bars[i].Aim}"
                )
        );
        return new(
            "Carbohydrate at each sitting, g",
            bars,
            "aim of the sitting",
            $"Bar chart: grams of carbohydrate at each sitting against its aim. {string.Join(", ", each)}."
        );
    }

    private static Table Menu(
        PlanDay day,
        DisplayDay shown,
        Reader reader,
        Func<Occasion, string> nameOf
    )
    {
        var name = reader.Dates.Day(day.Date);
        if (reader.IsNumberFree)
            return new(
                $"What to eat and drink on {name}: time, food and amount in household measures.",
                [new("When", 1.15), new("What", 2.4), new("How much", 2.2)],
                Groups(day, reader, nameOf, (_, _) => ""),
                null
            );
        var summary =
            $"What to eat and drink on {name}: time, food, amount and grams of carbohydrate.";
        var total = new Total(
            "Day total",
            $"aim {Rounding.Shown(day.Limits.CarbohydrateAimG, 0)}\u00A0g carbohydrate",
            $"{shown.CarbohydrateG}\u00A0g"
        );
        string Note(int sitting, Reader _) =>
            $"{shown.Occasions[sitting].CarbohydrateG}\u00A0g carbohydrate";
        return reader.IsLargePrint
            ? new(
                summary,
                [new("When", 1.5), new("What", 2.1), new("How much", 1.9)],
                Groups(day, reader, nameOf, Note),
                total
            )
            : new(
                summary,
                [
                    new("When", 1.2),
                    new("What", 2.35),
                    new("How much", 1.75),
                    new("Measured", 0.85, IsRight: true),
                    new("Carbs, g", 0.7, IsRight: true, IsFigure: true),
                ],
                Groups(day, reader, nameOf, Note, shown),
                total
            );
    }

    private static ImmutableArray<RowGroup> Groups(
        PlanDay day,
        Reader reader,
        Func<Occasion, string> nameOf,
        Func<int, Reader, string> note,
        DisplayDay? shown = null
    ) =>
        [
            .. day.Occasions.Select(
                (o, i) =>
                    new RowGroup(
                        new(reader.Dates.Time(o.Time), nameOf(o), note(i, reader)),
                        [
                            .. o.Portions.Select(
                                (p, k) => Row(p, reader, shown?.Occasions[i].PortionsG[k])
                            ),
                        ]
                    )
            ),
        ];

    private static ImmutableArray<Words> Row(Portion portion, Reader reader, int? carbohydrateG)
    {
        var name = portion.Name;
        if (reader.IsNumberFree)
            return [name, PortionWords.NumberFree(portion, reader.Units)];
        if (carbohydrateG is not { } grams)
            return [name, PortionWords.Full(portion, reader.Units)];
        var (household, scales) = (
            PortionWords.Household(portion, reader.Units),
            PortionWords.Grams(portion)
        );
        return
        [
            name,
            household,
            Words.Of(new Run(household == scales ? "" : scales, RunStyle.Quiet)),
            grams.ToString(CultureInfo.InvariantCulture),
        ];
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
