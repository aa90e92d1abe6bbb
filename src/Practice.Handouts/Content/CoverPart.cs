using System.Globalization;
using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Targets;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>Whose plan it is, for what, and its targets in short.</summary>
internal static class CoverPart
{
    /// <param name="kind">What the paper is, in small letters.</param>
    public static Cover Band(string kind, RaceWeekPlan plan, HandoutOptions options, Reader reader)
    {
        var header = plan.Header;
        var start = header.RaceStart;
        var place =
            header.RacePlace.Length > 0
                ? $"{header.RaceName} · {header.RacePlace}"
                : header.RaceName;
        var when = $"{reader.Dates.Full(start.Date)}, {reader.Dates.Time(start.TimeOfDay)}";
        return new(
            options.IssuedOn is null ? $"Draft of a {kind}" : Capital(kind),
            header.ClientName,
            [place, reader.IsNumberFree ? when : $"{when} · {Distance(header.DistanceKm, reader)}"],
            CountdownTo(start.Date, options.Today, reader)
        );
    }

    public static Facts InShort(RaceWeekPlan plan, Reader reader)
    {
        var first = plan.Days[0];
        var begins = new Fact(
            "First loading meal",
            reader.Dates.ShortDay(first.Date),
            first.Occasions.IsEmpty ? "" : $"at {reader.Dates.Time(first.Occasions[0].Time)}"
        );
        if (reader.IsNumberFree)
            return new([
                begins,
                new("Rhythm", "More early", "less in the evening, to sleep well"),
                new(
                    "Start",
                    reader.Dates.ShortDay(plan.Header.RaceStart.Date),
                    $"at {reader.Dates.Time(plan.Header.RaceStart.TimeOfDay)}"
                ),
            ]);
        var targets = plan.Targets;
        return new([
            new(
                "Carbohydrate, full day",
                Amount(targets.CarbohydratePerDay, "g"),
                $"{Amount(targets.CarbohydrateRate, "g")} for each kg of you"
            ),
            begins,
            new("Loading window", Number(targets.WindowHours, "h"), "up to race morning"),
            new(
                "Fibre, full day",
                targets.Fibre.High is { } fibre ? Shown(targets.Fibre, fibre, "g") : "as usual",
                targets.Fibre.High is null ? "" : "at most, to keep the gut quiet"
            ),
        ]);
    }

    public static IEnumerable<Block> Note(RaceWeekPlan plan, HandoutOptions options)
    {
        var note = plan.Note.Trim();
        if (note.Length > 0)
            yield return new Quote(note, options.IssuedBy);
    }

    /// <summary>The practice's own words under a plan.</summary>
    public static IEnumerable<Block> Closing(PracticeProfile practice, Reader reader)
    {
        var words = practice.Defaults.Texts.Closing;
        var safe = reader.IsNumberFree ? WithoutNumbers.Sentences(words) : words;
        if (safe.Length > 0)
            yield return new Quote(safe, practice.Name);
    }

    private static Countdown? CountdownTo(LocalDate race, LocalDate today, Reader reader) =>
        Period.DaysBetween(today, race) switch
        {
            < 0 => null,
            0 => new("Today", "is race day"),
            1 => new("Tomorrow", "is race day"),
            var days => new(
                reader.IsNumberFree
                    ? Capital(KitchenNumber.Words(days))
                    : days.ToString(CultureInfo.InvariantCulture),
                "days to the start"
            ),
        };

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    // international mile, exactly 1.609344 km
    private static string Distance(decimal km, Reader reader) =>
        reader.Units == Domain.Foods.HouseholdUnits.UsCustomary
            ? Number(km / 1.609344m, "miles", 1)
            : Number(km, "km", 1);

    private static string Amount(Target target, string unit) =>
        Shown(target, target.Aim ?? target.High ?? target.Low ?? 0, unit);

    private static string Shown(Target target, decimal value, string unit) =>
        $"{Plain(value, target.Decimals)}\u00A0{unit}";

    private static string Number(decimal value, string unit, int decimals = 0) =>
        $"{Plain(value, decimals)}\u00A0{unit}";

    private static string Plain(decimal value, int decimals)
    {
        var shown = Rounding.Shown(value, decimals);
        return decimals == 0 ? shown : shown.TrimEnd('0').TrimEnd('.');
    }
}
