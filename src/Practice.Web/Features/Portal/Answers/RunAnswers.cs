using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Web.Features.Portal.Answers;

/// <summary>The run: how far, how long, what was taken on it. Where nothing is told there was none, or not yet.</summary>
internal static class RunAnswers
{
    public const string Km = "run.km";
    public const string Hours = "run.hours";
    public const string Minutes = "run.minutes";
    public const string EffortMinutes = "run.effort";
    public const string Fuel = "run.fuel";
    public const string Grams = "run.grams";
    public const string Millilitres = "run.ml";
    public const string Glasses = "run.glasses";
    public const string Caffeine = "run.caffeine";
    public const string Stopped = "run.stopped";
    public const string Note = "run.note";

    private static readonly string[] Fields =
    [
        Km,
        Hours,
        Minutes,
        EffortMinutes,
        Fuel,
        Grams,
        Millilitres,
        Glasses,
        Caffeine,
        Stopped,
        Note,
    ];

    /// <param name="answers">What was typed.</param>
    /// <param name="fuel">What was to be taken; null when nothing was planned.</param>
    /// <param name="isNumberFree">Whether amounts are asked in words only.</param>
    /// <param name="earlier">What was told before: what the page does not ask stays as it was.</param>
    public static RunFeedback? Read(
        PageAnswers answers,
        RunFuelTrial? fuel,
        bool isNumberFree,
        RunFeedback? earlier
    )
    {
        if (!Fields.Any(field => answers[field].Length > 0))
            return null;
        var time = Time(answers);
        return (earlier ?? new RunFeedback()) with
        {
            DistanceKm = answers.Number(Km, 0, 500),
            Time = time,
            AtRaceEffort = answers.Number(EffortMinutes, 0, 2880) is { } effort
                ? Duration.FromMinutes((double)effort)
                : null,
            CarbohydrateG =
                fuel is not null ? Taken(answers, fuel, time)
                : isNumberFree ? earlier?.CarbohydrateG
                : answers.Number(Grams, 0, 1000),
            FluidMl = isNumberFree
                ? answers.Number(Glasses, 0, 40) * BodyAnswers.GlassMl
                : answers.Number(Millilitres, 0, 20_000),
            CaffeineMg = isNumberFree ? earlier?.CaffeineMg : answers.Number(Caffeine, 0, 2000),
            StoppedByGut = answers.Ticked(Stopped),
            Note = answers.Text(Note),
        };
    }

    private static Duration? Time(PageAnswers answers)
    {
        var hours = answers.Number(Hours, 0, 48);
        var minutes = answers.Number(Minutes, 0, 600);
        return hours is null && minutes is null
            ? null
            : Duration.FromMinutes((double)((hours ?? 0) * 60 + (minutes ?? 0)));
    }

    private static decimal? Taken(PageAnswers answers, RunFuelTrial fuel, Duration? time)
    {
        if (PartAnswers.Read(answers, Fuel) is not { } part)
            return null;
        if (part == 0)
            return 0;
        if (time is not { } known)
        {
            answers.Refuse(Minutes, "Say how long you ran: what you took is reckoned from it.");
            return null;
        }
        return Planned(fuel, known) * part;
    }

    private static decimal Planned(RunFuelTrial fuel, Duration time) =>
        fuel.CarbohydrateGPerHour * (decimal)time.TotalHours;

    public static void Write(
        PageAnswers answers,
        RunFuelTrial? fuel,
        bool isNumberFree,
        Feedback feedback
    )
    {
        if (feedback.Run is not { } run)
            return;
        answers.Number(Km, run.DistanceKm);
        if (run.Time is { } time)
        {
            answers.Number(Hours, (int)time.TotalHours);
            answers.Number(Minutes, time.Minutes);
        }
        answers.Number(EffortMinutes, (decimal?)run.AtRaceEffort?.TotalMinutes);
        if (fuel is not null)
            PartAnswers.Write(answers, Fuel, PartTaken(fuel, run));
        if (isNumberFree)
            answers.Number(Glasses, run.FluidMl / BodyAnswers.GlassMl);
        else
        {
            answers.Number(Grams, run.CarbohydrateG);
            answers.Number(Millilitres, run.FluidMl);
            answers.Number(Caffeine, run.CaffeineMg);
        }
        answers.Tick(Stopped, run.StoppedByGut);
        answers[Note] = run.Note;
    }

    private static decimal? PartTaken(RunFuelTrial fuel, RunFeedback run) =>
        run.CarbohydrateG switch
        {
            null => null,
            0 => 0,
            { } grams when run.Time is { } time && Planned(fuel, time) is > 0 and var planned =>
                Math.Round(grams / planned, 4),
            _ => null,
        };
}
