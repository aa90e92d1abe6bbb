using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;

namespace Practice.Web.Features.Rehearsals;

public sealed partial class FeedbackEditor
{
    private sealed class SymptomLine
    {
        public SymptomItem Item { get; set; }
        public SymptomMoment Moment { get; set; } = SymptomMoment.During;
        public int Score { get; set; }
        public int? Minutes { get; set; } = 60;
    }

    private ImmutableArray<RehearsedSitting> sittings = [];
    private Dictionary<(LocalDate, OccasionKind), string> parts = [];
    private List<SymptomLine> symptoms = [];
    private HashSet<WarningSign> signs = [];
    private bool vomited;
    private bool stopped;
    private bool ill;
    private decimal? km;
    private int? minutes;
    private int? hard;
    private decimal? grams;
    private decimal? ml;
    private decimal? sleep;
    private decimal? breakfast;
    private decimal? before;
    private decimal? after;
    private string note = "";

    /// <summary>The rehearsal, with what was told so far.</summary>
    [Parameter, EditorRequired]
    public Rehearsal Rehearsal { get; set; } = null!;

    /// <summary>Whether body mass may be asked for.</summary>
    [Parameter]
    public bool MassAllowed { get; set; }

    /// <summary>What was told is complete.</summary>
    [Parameter]
    public EventCallback<Feedback> OnTell { get; set; }

    /// <summary>Nothing is to be kept.</summary>
    [Parameter]
    public EventCallback OnLeave { get; set; }

    protected override void OnInitialized()
    {
        sittings = Rehearsal.Sittings();
        parts = sittings.ToDictionary(s => (s.Date, s.Kind), _ => "");
        if (Rehearsal.Feedback is not { } told)
            return;
        symptoms =
        [
            .. told.Symptoms.Select(s => new SymptomLine
            {
                Item = s.Item,
                Moment = s.Moment,
                Score = s.Score,
                Minutes = s.MinutesIntoRun,
            }),
        ];
        signs = [.. told.WarningSigns];
        (vomited, stopped, ill) = (
            told.Vomited,
            told.Run is { StoppedByGut: true },
            told.IllOrPeriod
        );
        (km, grams, ml) = (told.Run?.DistanceKm, told.Run?.CarbohydrateG, told.Run?.FluidMl);
        (minutes, hard) = (Minutes(told.Run?.Time), Minutes(told.Run?.AtRaceEffort));
        (sleep, breakfast) = (told.SleepHours, told.BreakfastPart * 100);
        (before, after) = (told.MassBefore?.Kilograms, told.MassAfter?.Kilograms);
        note = told.Note;
    }

    private void AllEaten()
    {
        foreach (var sitting in parts.Keys)
            parts[sitting] = "1";
    }

    // what is typed here is laid over what was told: a sitting left alone, and all that is not asked here, stays
    private Feedback Read()
    {
        var told = Rehearsal.Feedback ?? new Feedback { ReceivedAt = default };
        return told with
        {
            Occasions = [.. sittings.Select(Eaten).OfType<EatenOccasion>()],
            Symptoms =
            [
                .. symptoms.Select(s => new Symptom(
                    s.Item,
                    s.Moment,
                    Math.Clamp(s.Score, 0, Symptom.Worst),
                    s.Moment == SymptomMoment.During ? s.Minutes ?? 0 : null
                )),
            ],
            WarningSigns = [.. signs.Order()],
            Vomited = vomited,
            IllOrPeriod = ill,
            SleepHours = sleep,
            BreakfastPart = breakfast / 100,
            MassBefore = Mass(before),
            MassAfter = Mass(after),
            Run = (told.Run ?? new RunFeedback()) with
            {
                DistanceKm = km,
                Time = Span(minutes),
                AtRaceEffort = Span(hard),
                CarbohydrateG = grams,
                FluidMl = ml,
                StoppedByGut = stopped,
            },
            Note = note.Trim(),
        };
    }

    private EatenOccasion? Eaten(RehearsedSitting sitting)
    {
        if (
            !decimal.TryParse(
                parts[(sitting.Date, sitting.Kind)],
                CultureInfo.InvariantCulture,
                out var part
            )
        )
            return Rehearsal.Feedback?.Occasions.FirstOrDefault(o =>
                o.Date == sitting.Date && o.Kind == sitting.Kind
            );
        return part == 1
            ? EatenOccasion.AsPlanned(sitting)
            : new(
                sitting.Date,
                sitting.Kind,
                [
                    .. sitting.Portions.Select(p =>
                        part == 0
                            ? EatenPortion.Left(p.FoodId)
                            : EatenPortion.Amount(p.FoodId, part)
                    ),
                ],
                []
            );
    }

    private static BodyMass? Mass(decimal? kilograms) =>
        kilograms is >= 25 and <= 300 ? BodyMass.OfKilograms(kilograms.Value) : null;

    private static Duration? Span(int? minutes) =>
        minutes is { } whole ? Duration.FromMinutes(whole) : null;

    private static int? Minutes(Duration? span) =>
        span is { } time ? (int)Math.Round(time.TotalMinutes) : null;

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
