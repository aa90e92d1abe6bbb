using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>What is asked of a rehearsal sheet.</summary>
public sealed record RehearsalSheetOptions
{
    /// <summary>Whether no number with a unit may be on it; a plan that is number-free stays so whatever is asked.</summary>
    public bool NumberFree { get; init; }

    /// <summary>Paper; null for the practice's own.</summary>
    public PaperSize? Paper { get; init; }

    /// <summary>Who hands it out.</summary>
    public string By { get; init; } = "";

    /// <summary>The day.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Whether body mass may be asked for.</summary>
    public bool MassAllowed { get; init; }

    /// <summary>Address of the client's phone pages; null for none.</summary>
    public string? PhoneAddress { get; init; }

    /// <summary>Language tag of the document.</summary>
    public string Language { get; init; } = "en-GB";
}

/// <summary>
/// The rehearsal on paper: what to eat with a box to tick at each food, and boxes for what was felt. For the kitchen wall,
/// and for those who would rather not use a phone. Pure; layout adds nothing.
/// </summary>
public static class RehearsalSheet
{
    private static readonly ImmutableArray<string> Moments =
    [
        "Before the run",
        "On the run",
        "At its end",
        "Two hours after",
        "The day after",
    ];

    /// <summary>Builds the sheet of a rehearsal.</summary>
    public static HandoutDoc Build(
        Rehearsal rehearsal,
        PracticeProfile practice,
        RehearsalSheetOptions options
    )
    {
        ArgumentNullException.ThrowIfNull(rehearsal);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(options);
        var reader = Reader.Of(
            rehearsal.Plan,
            new HandoutOptions
            {
                Version = 0,
                Today = options.Today,
                Language = options.Language,
                Variant = options.NumberFree ? HandoutVariant.NumberFree : HandoutVariant.Full,
            }
        );
        var plan = reader.IsNumberFree ? WithoutNumbers.Of(rehearsal.Plan) : rehearsal.Plan;
        var client = plan.Header.ClientName;
        var kind = Kind(rehearsal.Details.Kind);
        return new()
        {
            Title = $"{kind} for {client}: {plan.Header.RaceName}",
            Language = options.Language,
            Author = options.By.Length > 0 ? options.By : practice.Name,
            Date = options.Today,
            Practice = practice,
            Paper = options.Paper ?? practice.Paper,
            RunningHead = $"{client} · {kind}, run on {reader.Dates.Day(rehearsal.RunOn)}",
            Foot = [$"{kind} prepared for {client}", Letterhead.Contact(practice)],
            Blocks =
            [
                new Cover(
                    kind,
                    client,
                    [
                        $"Run on {reader.Dates.Full(rehearsal.RunOn)}",
                        $"For {plan.Header.RaceName}, {reader.Dates.Day(plan.Header.RaceStart.Date)}",
                    ],
                    null
                ),
                .. How(rehearsal, options, reader),
                .. Days(rehearsal, plan, reader),
                .. Run(rehearsal.Details, reader),
                .. Felt(options, reader),
            ],
        };
    }

    private static IEnumerable<Block> How(
        Rehearsal rehearsal,
        RehearsalSheetOptions options,
        Reader reader
    )
    {
        var reason = rehearsal.Details.Reason.Trim();
        if (reader.IsNumberFree)
            reason = WithoutNumbers.Sentences(reason);
        if (reason.Length > 0)
            yield return new Quote(reason, options.By);
        yield return new Heading(2, "How it works");
        yield return new Bullets([
            "Eat and drink as listed, as if this were the race. Tick what you had; write beside it what you changed.",
            "Run as you would any long run, at your usual hour. Change nothing else.",
            "Note what you felt, also when it was nothing: that is what the plan is made better from.",
        ]);
        if (options.PhoneAddress is { } address)
            yield return new CameraCode(
                QrSquares.Of(address),
                "Or use your phone",
                "Point the camera here: the same questions, kept on the phone and sent when there is signal. The code is "
                    + "yours alone, so please do not pass this sheet on.",
                "Code for a phone's camera: opens your own pages"
            );
    }

    private static IEnumerable<Block> Days(Rehearsal rehearsal, RaceWeekPlan plan, Reader reader)
    {
        var sittings = rehearsal.Details.Part.Sittings(
            plan,
            rehearsal.RunOn,
            rehearsal.Details.Dose
        );
        foreach (var day in sittings.GroupBy(s => s.Date))
        {
            yield return new Heading(2, reader.Dates.Day(day.Key));
            yield return new CheckList([
                .. day.Select(s => new CheckSection(
                    $"{reader.Dates.Time(s.Time)} {Sittings.Name(s.Kind, reader.Units)}",
                    [
                        .. s.Portions.Select(p => new CheckItem(
                            p.Name,
                            reader.IsNumberFree
                                ? PortionWords.NumberFree(p, reader.Units)
                                : PortionWords.Full(p, reader.Units)
                        )),
                    ]
                )),
            ]);
        }
    }

    private static IEnumerable<Block> Run(RehearsalDetails details, Reader reader)
    {
        var lines = new[] { Breakfast(details.Breakfast, reader), Fuel(details.RunFuel, reader) }
            .OfType<string>()
            .Select(Words.FromString)
            .ToImmutableArray();
        if (lines.IsEmpty)
            yield break;
        yield return new Heading(2, "Breakfast and the run");
        yield return new Bullets(lines);
    }

    private static string? Breakfast(BreakfastTrial? breakfast, Reader reader)
    {
        if (breakfast is null)
            return null;
        var what = breakfast.What.Trim();
        if (reader.IsNumberFree)
            return $"Race breakfast, as early before the run as before the race{Said(WithoutNumbers.Sentences(what))}.";
        return $"Race breakfast {Number(breakfast.HoursBeforeRun)}\u00A0h before the run, {Whole(breakfast.CarbohydrateG)}\u00A0g "
            + $"carbohydrate{Said(what)}.";
    }

    private static string? Fuel(RunFuelTrial? fuel, Reader reader)
    {
        if (fuel is null)
            return null;
        var what = fuel.What.Trim();
        if (reader.IsNumberFree)
            return $"On the run, what you will take in the race{Said(WithoutNumbers.Sentences(what))}.";
        var drink = fuel.FluidMlPerHour is { } ml
            ? $", {Whole(ml)}\u00A0ml an hour to drink"
            : ", drinking by thirst";
        return $"On the run {Whole(fuel.CarbohydrateGPerHour)}\u00A0g carbohydrate an hour{drink}{Said(what)}.";
    }

    private static IEnumerable<Block> Felt(RehearsalSheetOptions options, Reader reader) =>
        [
            new Heading(2, "What you felt", NewPage: true),
            new Paragraph(
                reader.IsNumberFree
                    ? "Leave a box empty for nothing. One stroke: a little. Two strokes: it disturbed you. Three strokes: you had to "
                        + "stop."
                    : "Write a number in each box, from 0 to 10. 0: nothing. 1 to 4: a little. 5 to 9: it disturbed you. 10: you had "
                        + "to stop."
            ),
            new ScoreBoxes(
                Moments,
                [.. Enum.GetValues<SymptomItem>().Select(i => Capital(i.InWords()))]
            ),
            new Callout(
                IsCaution: true,
                "Tell us at once, and get help",
                [
                    new Bullets([
                        .. Enum.GetValues<WarningSign>()
                            .Select(s => Words.FromString(Capital(s.InWords()))),
                    ]),
                    new Paragraph(WarningSigns.Advice.Text),
                ]
            ),
            new CheckList([
                new CheckSection(
                    "Also",
                    [
                        new("I vomited", ""),
                        new("My gut ended the run", ""),
                        new("I was ill, or had period-related symptoms", ""),
                        new("Urine that morning: pale, yellow or dark", ""),
                    ]
                ),
                new CheckSection(
                    "The run",
                    [.. Asked(options, reader).Select(q => new CheckItem(q, ""))]
                ),
            ]),
            new NoteLines("Notes: what you changed, weather, what you would change"),
        ];

    private static IEnumerable<string> Asked(RehearsalSheetOptions options, Reader reader)
    {
        yield return "How far, how long, how much of it hard";
        yield return "What you took on the run";
        yield return "What you drank beside the plan, how you slept";
        if (options.MassAllowed && !reader.IsNumberFree)
            yield return "Body mass before and after the run";
    }

    private static string Kind(RehearsalKind kind) =>
        kind == RehearsalKind.Full ? "Full rehearsal" : "Partial rehearsal";

    private static string Said(string what) => what.Length > 0 ? $": {what.TrimEnd('.')}" : "";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Whole(decimal value) => Rounding.Shown(value, 0);

    private static string Number(decimal value) =>
        value.ToString("0.#", CultureInfo.InvariantCulture);
}
