using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Evidence;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;
using Practice.Domain.Races;

namespace Practice.Domain.Targets;

/// <summary>When the client should finish: the goal where there is one, else what a recent result predicts.</summary>
internal static class ExpectedFinishTarget
{
    public static Target Of(LoadingCase loading)
    {
        var goal = Minutes(loading.Race.GoalTime);
        var prediction = Prediction(loading);
        var predicted = Minutes(prediction?.Time);
        var riegel = Minutes(prediction?.Riegel);
        var computed = goal ?? predicted;
        var own = loading.OverrideOf(TargetKeys.ExpectedFinish, computed);
        var aim = own?.Value ?? computed;
        return new Target
        {
            Key = TargetKeys.ExpectedFinish,
            Name = "Expected finish",
            Aim = aim,
            Low = Least(aim, predicted, riegel),
            High = Most(aim, predicted, riegel),
            Unit = "min",
            Override = own,
            Basis = new Basis(
                goal is null
                    ? "Prediction from a recent race"
                    : "The client's goal; beside it what a recent race predicts",
                Inputs(loading, goal, prediction),
                References(computed, prediction),
                Note(loading.Race, goal, prediction)
            ),
        };
    }

    private static RaceTimePrediction? Prediction(LoadingCase loading) =>
        loading.Race.Discipline == Discipline.RoadRunning
        && loading.Physique.RecentResult is { } result
            ? RaceTimePrediction.From(result, loading.Race.DistanceKm, loading.Physique.WeeklyKm)
            : null;

    private static ImmutableArray<BasisInput> Inputs(
        LoadingCase loading,
        decimal? goal,
        RaceTimePrediction? prediction
    )
    {
        var inputs = ImmutableArray.CreateBuilder<BasisInput>();
        inputs.Add(BasisInput.Of("Distance", loading.Race.DistanceKm, "km", 1));
        if (goal is { } minutes)
            inputs.Add(new("Goal", TargetWords.Time(minutes)));
        if (loading.Physique.RecentResult is { } result)
            inputs.Add(new("Recent race", Words(result)));
        if (loading.Physique.WeeklyKm is { } weekly)
            inputs.Add(BasisInput.Of("Running in a usual week", weekly, "km"));
        if (prediction is not null)
            inputs.AddRange(Predictions(loading, prediction));
        return inputs.ToImmutable();
    }

    private static IEnumerable<BasisInput> Predictions(
        LoadingCase loading,
        RaceTimePrediction prediction
    )
    {
        yield return new(prediction.Model, Words(prediction.Time));
        if (prediction.Time != prediction.Riegel)
            yield return new("Riegel, for comparison", Words(prediction.Riegel));
        if (loading.Vo2Max.Origin == Vo2MaxOrigin.FromRace)
            yield return new(
                "Daniels-Gilbert, for comparison",
                Words(
                    DanielsGilbert.TimeAt(
                        loading.Vo2Max.MlPerKgMin,
                        (double)loading.Race.DistanceKm * 1000
                    )
                )
            );
    }

    private static string? Note(Race race, decimal? goal, RaceTimePrediction? prediction) =>
        prediction switch
        {
            null when race.Discipline != Discipline.RoadRunning =>
                "Predictions are for road running; set a goal time.",
            null => "Enter a recent race to hold the goal against.",
            _ when goal < Minutes(prediction.Riegel) =>
                "The goal is faster than a recent race predicts even by the fast relation: check the pacing.",
            _ => prediction.Warning,
        };

    /// <summary>A goal without a prediction beside it is the client's word and has no source.</summary>
    private static ImmutableArray<Source> References(
        decimal? minutes,
        RaceTimePrediction? prediction
    ) =>
        (minutes, prediction) switch
        {
            (null, _) => [Sources.AssumedSpeed],
            (_, null) => [],
            _ => [Sources.Vickers2016, Sources.Riegel1981, Sources.Daniels1979],
        };

    private static decimal? Minutes(Duration? time) => (decimal?)time?.TotalMinutes;

    private static decimal? Least(params decimal?[] values) => values.Min();

    private static decimal? Most(params decimal?[] values) => values.Max();

    private static string Words(Duration time) => TargetWords.Time((decimal)time.TotalMinutes);

    private static string Words(RaceResult result)
    {
        var on = result.On is { } day ? $", {BasisInput.Day(day)}" : "";
        return $"{Rounding.Shown(result.DistanceKm, 1)} km in {Words(result.Time)}{on}";
    }
}
