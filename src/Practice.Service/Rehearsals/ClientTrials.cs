using System.Collections.Immutable;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Store.Practices;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>A rehearsal that the client told of, and how it reads.</summary>
/// <param name="Rehearsal">The rehearsal.</param>
/// <param name="Review">How it reads; with the practitioner's verdict where she gave one.</param>
public sealed record ReadTrial(Rehearsal Rehearsal, RehearsalReview Review);

/// <summary>What all trials of a client say together.</summary>
/// <param name="Trials">Trials, earliest first, for whatever race.</param>
/// <param name="Suspects">Chances of the foods.</param>
/// <param name="DoseResponse">Risk against dose; null with fewer than six trials.</param>
/// <param name="Foods">The practice's foods, which the keys name.</param>
public sealed record ClientTrials(
    ImmutableArray<ReadTrial> Trials,
    SuspectFoods Suspects,
    DoseResponse? DoseResponse,
    FoodLibrary Foods
)
{
    internal static ClientTrials Of(
        Client client,
        IEnumerable<Rehearsal> rehearsals,
        RehearsalBackground background,
        FoodLibrary foods,
        SymptomThresholds thresholds
    )
    {
        var read = rehearsals
            .Where(r => r is { Feedback: not null, Status: not RehearsalStatus.Cancelled })
            .OrderBy(r => r.RunOn)
            .Select(r => new ReadTrial(r, Read(r, thresholds)))
            .ToImmutableArray();
        var mass = client.LatestMass?.Mass.Kilograms ?? 0;
        var trials = FoodTrial.Of(read.Select(r => r.Review), mass);
        return new(
            read,
            SuspectFoods.Of(trials, Assumptions(background.Gut, foods)),
            Practice.Domain.Rehearsals.DoseResponse.Of(trials),
            foods
        );
    }

    /// <summary>What was decided is read by the lines of its day, whatever the practice draws since.</summary>
    private static RehearsalReview Read(Rehearsal rehearsal, SymptomThresholds thresholds)
    {
        var decision = rehearsal.Decision;
        var review = RehearsalReview.Of(
            rehearsal.Details,
            rehearsal.Plan,
            rehearsal.Feedback!,
            decision is null ? thresholds : decision.Thresholds ?? SymptomThresholds.House
        );
        return decision is not null ? review with { Verdict = decision.Verdict } : review;
    }

    private static SuspectAssumptions Assumptions(GutHistory gut, FoodLibrary foods) =>
        SuspectAssumptions.Default with
        {
            Priors = foods
                .All.Concat(foods.Retired)
                .ToImmutableDictionary(food => food.Id, food => FoodPrior.Of(food, gut)),
        };
}

/// <summary>Reads all trials of a client.</summary>
public sealed class ReadTrials(
    RehearsalStore rehearsals,
    RehearsalCalendars calendars,
    Larder larder,
    PracticeStore practices
)
{
    internal async Task<ClientTrials> Of(Desk desk, Client client, CancellationToken cancel) =>
        ClientTrials.Of(
            client,
            await rehearsals.OfClient(desk.PracticeId, client.Id, cancel),
            await calendars.Background(desk, client.Id, cancel),
            await larder.Run(desk, cancel),
            await Thresholds(desk, cancel)
        );

    internal async Task<SymptomThresholds> Thresholds(Desk desk, CancellationToken cancel) =>
        (await practices.Find(desk.PracticeId, cancel))?.Value.Defaults.Thresholds
        ?? SymptomThresholds.House;
}
