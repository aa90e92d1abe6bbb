using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Web.Parts;

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
    private decimal? caffeine;
    private decimal? air;
    private decimal? humidity;
    private decimal? beside;
    private int? urine;
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
            .. told
                .Symptoms.Where(s => s.Score > 0)
                .Select(s => new SymptomLine
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
        (caffeine, beside, urine) = (told.Run?.CaffeineMg, told.FluidMl, told.UrineColour);
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
            Symptoms = [.. Felt(told)],
            WarningSigns = [.. signs.Order()],
            Vomited = vomited,
            IllOrPeriod = ill,
            FluidMl = beside,
            UrineColour = urine,
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
                CaffeineMg = caffeine,
                WetBulbGlobeC = Heat ?? told.Run?.WetBulbGlobeC,
                StoppedByGut = stopped,
            },
            Note = note.Trim(),
        };
    }

    /// <summary>Heat stress from air and humidity, °C; null without both, or outside of what it is estimated for.</summary>
    private decimal? Heat =>
        (air, humidity)
            is (
                >= 0
                    and <= (decimal)WetBulbGlobe.HighestAirC
                    and var degrees,
                >= 0
                    and <= 100
                    and var percent
            )
            ? Math.Min(
                50,
                Math.Round((decimal)WetBulbGlobe.Estimated((double)degrees, (double)percent), 1)
            )
            : null;

    private string HeatHint =>
        (Heat ?? Rehearsal.Feedback?.Run?.WetBulbGlobeC) is { } heat
            ? $"Heat stress about {Say.Number(heat)} °C"
            : "With the humidity: heat can bring symptoms by itself";

    // what was asked and not felt is not listed here, and stays told
    private IEnumerable<Symptom> Felt(Feedback told)
    {
        var typed = symptoms
            .Select(s => new Symptom(
                s.Item,
                s.Moment,
                Math.Clamp(s.Score, 0, Symptom.Worst),
                s.Moment == SymptomMoment.During ? s.Minutes ?? 0 : null
            ))
            .ToList();
        return typed.Concat(
            told.Symptoms.Where(s =>
                s.Score == 0 && !typed.Exists(t => t.Item == s.Item && t.Moment == s.Moment)
            )
        );
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
