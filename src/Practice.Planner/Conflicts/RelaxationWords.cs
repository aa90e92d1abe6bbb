using System.Globalization;
using Practice.Domain.Plans;
using Practice.Planner.Checking;
using Practice.Planner.Model;

namespace Practice.Planner.Conflicts;

/// <summary>Turns what a limit was found to need into a new value for it, and into words.</summary>
internal static class RelaxationWords
{
    private const decimal MostDrunk = 0.5m;
    private const decimal MostFibreG = 20;

    // beyond this the shape of the day is gone
    private const decimal MostTolerance = 0.35m;

    /// <param name="question">The day asked about.</param>
    /// <param name="kind">The limit that gives way.</param>
    /// <param name="values">A menu that keeps all others.</param>
    /// <param name="least">Steps of excess that every such menu has, in sum; null when not known.</param>
    public static Relaxation? Of(
        LimitQuestion question,
        LimitKind kind,
        long[] values,
        double? least
    )
    {
        var day = question.Model.Request.Days[0];
        var limits = day.Limits;
        var on = $"on {day.Date.DayOfWeek}";
        var missed = question.RowsOf(kind).Where(r => r.CostOf(r.SumOf(values)) > 0).ToList();
        if (missed.Count == 0)
            return null;
        var row = missed[0];
        var certainly = (decimal?)least / 100;
        return kind switch
        {
            LimitKind.Variety => new(
                kind,
                day.Date,
                limits.MoreRepeats,
                limits.MoreRepeats + missed.Max(r => r.Excess(r.SumOf(values))),
                null,
                $"Allow {on}: {string.Join(", ", missed.Select(r => r.Says))}"
            ),
            LimitKind.DrinksShare => Drinks(),
            LimitKind.OccasionCarbohydrate => Tolerance(),
            LimitKind.Fibre => AtMost("fibre", limits.FibreMaxG, Value(), Fibre),
            LimitKind.Fat => Fat(),
            LimitKind.ProteinCeiling => AtMost("protein", limits.ProteinMaxG, Value()),
            LimitKind.ProteinFloor => AtLeast("protein", limits.ProteinMinG, Value()),
            LimitKind.DayCarbohydrate => Carbohydrate(),
            LimitKind.SugaryShare => Sugary(),
            LimitKind.Sodium => Sodium(),
            LimitKind.OccasionWeight => Weight(),
            _ => null,
        };

        decimal Value() => row.SumOf(values) * row.Limit!.UnitsPerStep;

        decimal Share(Func<Item, long> part) =>
            Total(part) / Math.Max(1, Total(i => i.Carbohydrate));

        decimal Total(Func<Item, long> perStep) =>
            question
                .Model.Plates.SelectMany(p => p.Candidates)
                .Sum(c => perStep(c.Item) * (decimal)values[c.Amount]);

        Relaxation AtMost(
            string name,
            decimal from,
            decimal found,
            Func<decimal, string>? more = null
        )
        {
            var to = Up(found, 10);
            var certain = from + certainly;
            return new(
                kind,
                day.Date,
                from,
                to,
                certain,
                $"Raise {name} {on} to {Text(to)} g{Surely(certain, c => $"at least {Text(Down(c, 10))} g is certain")}{more?.Invoke(to)}"
            );
        }

        string Fibre(decimal to) =>
            to > MostFibreG ? $"; more than {Text(MostFibreG)} g is a lot for these days" : "";

        Relaxation AtLeast(string name, decimal from, decimal found)
        {
            var to = Down(found, 10);
            var certain = from - certainly;
            return new(
                kind,
                day.Date,
                from,
                to,
                certain,
                $"Ask for less {name} {on}, {Text(to)} g{Surely(certain, c => $"no menu has more than {Text(Up(c, 10))} g")}"
            );
        }

        Relaxation? Drinks()
        {
            var found = Share(i => i.Drunk);
            var isMore = found > limits.DrinksShareMax;
            var (from, to) = isMore
                ? (limits.DrinksShareMax, Up(found, 100))
                : (limits.DrinksShareMin, Down(found, 100));
            return to > MostDrunk
                ? null
                : new(
                    kind,
                    day.Date,
                    from,
                    to,
                    null,
                    $"Let drinks bring {(isMore ? "up to" : "only")} {Percent(to)} of the carbohydrate {on}"
                );
        }

        Relaxation? Tolerance()
        {
            var to = Up(
                missed.Max(r =>
                {
                    var occasion = question.Model.Plates[r.Plate].Occasion;
                    var aim = occasion.CarbohydrateAimG;
                    return aim == 0 ? 0 : Math.Abs(r.SumOf(values) / 100m - aim) / aim;
                }),
                100
            );
            var where = missed.Select(r => LimitWords.NameOf(question.Model.Plates[r.Plate].Kind));
            return to > MostTolerance
                ? null
                : new(
                    kind,
                    day.Date,
                    limits.OccasionTolerance,
                    to,
                    null,
                    $"Let {string.Join(" and ", where)} {on} differ from the aim by up to {Percent(to)}"
                );
        }

        Relaxation Fat()
        {
            var to = Up(Total(i => i.Fat) / 100, 1);
            return new(
                kind,
                day.Date,
                limits.FatMaxG,
                to,
                null,
                $"Raise fat {on} to {Text(to)} g, {Percent(Up(EnergyShareOfFat(), 100))} of the energy"
            );
        }

        decimal EnergyShareOfFat()
        {
            var fat = 9 * Total(i => i.Fat);
            return fat / (fat + 4 * Total(i => i.Carbohydrate + i.Protein));
        }

        Relaxation Carbohydrate()
        {
            var found = Total(i => i.Carbohydrate) / 100;
            var tolerance = limits.CarbohydrateTolerance * limits.CarbohydrateAimG;
            var isShort = found < limits.CarbohydrateAimG;
            var to = isShort ? Down(found, 1) : Up(found, 1);
            var certain = isShort
                ? limits.CarbohydrateAimG - tolerance - certainly
                : limits.CarbohydrateAimG + tolerance + certainly;
            return new(
                kind,
                day.Date,
                limits.CarbohydrateAimG,
                to,
                certain,
                isShort
                    ? $"Aim for {Text(to)} g of carbohydrate {on}{Surely(certain, c => $"no menu has more than {Text(Up(c, 1))} g")}"
                    : $"Accept {Text(to)} g of carbohydrate {on}{Surely(certain, c => $"no menu has less than {Text(Down(c, 1))} g")}"
            );
        }

        Relaxation Sugary()
        {
            var to = Up(Share(i => i.FromSugaryFood), 100);
            return new(
                kind,
                day.Date,
                limits.SugaryShareMax,
                to,
                null,
                $"Let sugary foods bring up to {Percent(to)} of the carbohydrate {on}"
            );
        }

        Relaxation Sodium()
        {
            var found = Total(i => i.Sodium);
            var isMore = found > limits.SodiumMaxMg;
            var bound = (decimal?)least;
            var (from, to) = isMore
                ? (limits.SodiumMaxMg, Up(found / 10, 1) * 10)
                : (limits.SodiumMinMg, Down(found / 10, 1) * 10);
            var certain = isMore ? from + bound : from - bound;
            return new(
                kind,
                day.Date,
                from,
                to,
                certain,
                isMore
                    ? $"Allow {Text(to)} mg of sodium {on}{Surely(certain, c => $"at least {Text(Down(c, 1))} mg is certain")}"
                    : $"Ask for {Text(to)} mg of sodium {on}{Surely(certain, c => $"no menu has more than {Text(Up(c, 1))} mg")}"
            );
        }

        Relaxation Weight()
        {
            var to = Up(
                missed.Max(r =>
                    r.SumOf(values)
                    / 10m
                    / Meals.Helpings.WeightShare(question.Model.Plates[r.Plate].Kind)
                ),
                1
            );
            return new(
                kind,
                day.Date,
                limits.OccasionWeightMaxG,
                to,
                null,
                $"Let a main meal {on} weigh up to {Text(to)} g"
            );
        }
    }

    // what is certain is told beside what was found; where nothing is, the closest menu speaks
    private static string Surely(decimal? certain, Func<decimal, string> words) =>
        certain is { } value ? $": {words(value)}" : ", as in the closest menu";

    private static decimal Up(decimal value, int perUnit) =>
        Math.Ceiling(value * perUnit) / perUnit;

    private static decimal Down(decimal value, int perUnit) =>
        Math.Floor(value * perUnit) / perUnit;

    private static string Text(decimal value) =>
        value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Percent(decimal share) =>
        (100 * share).ToString("0", CultureInfo.InvariantCulture) + " %";
}
