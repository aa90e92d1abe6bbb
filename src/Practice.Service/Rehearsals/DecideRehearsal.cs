using System.Collections.Immutable;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Service.Audit;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Races;
using Practice.Store.Clients;
using Practice.Store.Plans;
using Practice.Store.Rehearsals;

namespace Practice.Service.Rehearsals;

/// <summary>What a practitioner says to a rehearsal.</summary>
/// <param name="Verdict">Her verdict.</param>
/// <param name="Accepted">Keys of the proposals she takes.</param>
/// <param name="Note">Why.</param>
public sealed record RehearsalJudgement(
    TrialVerdict Verdict,
    ImmutableHashSet<string> Accepted,
    string Note
);

/// <summary>What became of a decision.</summary>
public abstract record DecideOutcome;

/// <summary>It is on file.</summary>
/// <param name="NewVersionId">The draft that came of it; null when the plan stays as it is.</param>
public sealed record RehearsalDecided(Guid? NewVersionId) : DecideOutcome;

/// <summary>The person may not decide.</summary>
public sealed record DecisionNotAllowed : DecideOutcome;

/// <summary>There is no feedback, or somebody changed the rehearsal meanwhile.</summary>
public sealed record DecidedElsewhere : DecideOutcome;

/// <summary>
/// Decides on a rehearsal: the verdict, each proposal taken or not, and the draft that follows. What the trials taught of
/// foods goes to the client's tastes, so that the planner prefers and avoids it from now on.
/// </summary>
public sealed class DecideRehearsal(
    RaceCases cases,
    ClientStore clients,
    PlanStore plans,
    RehearsalStore rehearsals,
    ReadTrials trials,
    PlanRevision revision,
    PracticeCalendar calendar
)
{
    /// <summary>What would change in the plan, with nothing put on file; null where nothing would.</summary>
    public async Task<PlanDiff?> Preview(
        Desk desk,
        Guid rehearsalId,
        RehearsalJudgement judgement,
        CancellationToken cancel
    ) =>
        await rehearsals.Find(desk.PracticeId, rehearsalId, cancel) is { Value: var rehearsal }
        && await Draft(desk, rehearsal, judgement, cancel)
            is { Before: { } before, After: { } after }
            ? PlanDiff.Of(before.Plan, after.Plan)
            : null;

    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsal">The rehearsal as it was read: what the client told later must be read first.</param>
    /// <param name="judgement">What she says.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<DecideOutcome> Run(
        Desk desk,
        OnFile<Rehearsal> rehearsal,
        RehearsalJudgement judgement,
        CancellationToken cancel
    )
    {
        if (!desk.MayDecide)
            return new DecisionNotAllowed();
        if (
            rehearsal.Value.Status != RehearsalStatus.FedBack
            || await Draft(desk, rehearsal.Value, judgement, cancel) is not { } draft
        )
            return new DecidedElsewhere();
        rehearsal.Value.Review(
            new ReviewDecision(judgement.Verdict, desk.Name, calendar.Now, judgement.Note.Trim())
            {
                Answers =
                [
                    .. draft.Proposals.Select(p => new ProposalAnswer(
                        p.Key,
                        p.Title,
                        judgement.Accepted.Contains(p.Key)
                    )),
                ],
                Thresholds = await trials.Thresholds(desk, cancel),
                PlanVersionId = draft.After?.Id,
                FromVersionId = draft.After is null ? null : draft.Before?.Id,
            }
        );
        if (await Save(desk, rehearsal, draft.After, cancel) is not Saved<Rehearsal>)
            return new DecidedElsewhere();
        await Teach(desk, rehearsal.Value.ClientId, draft.Tastes, cancel);
        return new RehearsalDecided(draft.After?.Id);
    }

    private Task<SaveOutcome<Rehearsal>> Save(
        Desk desk,
        OnFile<Rehearsal> rehearsal,
        PlanVersion? next,
        CancellationToken cancel
    )
    {
        var reviewed = desk.Note("rehearsal-reviewed", rehearsal.Value.Id, calendar.Now);
        return next is null
            ? rehearsals.Save(rehearsal, reviewed, cancel)
            : rehearsals.Save(
                rehearsal,
                reviewed,
                next,
                desk.Note("plan-begun", next.Id, calendar.Now),
                cancel
            );
    }

    private sealed record Drafted(
        ImmutableArray<Proposal> Proposals,
        PlanVersion? Before,
        PlanVersion? After,
        Tastes Tastes
    );

    private async Task<Drafted?> Draft(
        Desk desk,
        Rehearsal rehearsal,
        RehearsalJudgement judgement,
        CancellationToken cancel
    )
    {
        if (
            rehearsal.Feedback is null
            || await cases.Open(desk, rehearsal.RaceId, cancel) is not { } raceCase
        )
            return null;
        var said = await trials.Of(desk, raceCase.Client, cancel);
        var latest = (await plans.Latest(desk.PracticeId, rehearsal.RaceId, cancel))?.Value;
        var proposals = OpenRehearsal.Proposals(
            rehearsal,
            said,
            latest?.Plan ?? rehearsal.Plan,
            raceCase,
            judgement.Verdict
        );
        var taken = proposals.Where(p => judgement.Accepted.Contains(p.Key)).ToImmutableArray();
        var changes = taken.Select(p => p.Change).OfType<PlanChange>().ToImmutableArray();
        var tastes = LearntTastes.Of(
            raceCase.Client.Tastes,
            said.Suspects,
            changes.OfType<LeaveOutFood>().Select(c => c.FoodId)
        );
        if (latest is null || changes.IsEmpty)
            return new(proposals, latest, null, tastes);
        var plan = await revision.Make(raceCase, latest.Plan, changes, tastes, cancel);
        var after = PlanVersion.Draft(
            desk.PracticeId,
            rehearsal.RaceId,
            latest.Number + 1,
            plan,
            Reason(rehearsal, taken),
            calendar.Now
        );
        return new(proposals, latest, after, tastes);
    }

    private static string Reason(Rehearsal rehearsal, ImmutableArray<Proposal> taken)
    {
        var kind = rehearsal.Details.Kind == RehearsalKind.Full ? "full" : "partial";
        var day = Day.Format(rehearsal.RunOn);
        return $"After the {kind} rehearsal of {day}: {string.Join("; ", taken.Select(p => p.Title))}";
    }

    private static readonly NodaTime.Text.LocalDatePattern Day =
        NodaTime.Text.LocalDatePattern.CreateWithInvariantCulture("d MMMM");

    // somebody may be at work on the client: the lesson is written into what is on file then
    private async Task Teach(Desk desk, Guid clientId, Tastes tastes, CancellationToken cancel)
    {
        for (var left = 3; left > 0; left--)
        {
            if (
                await clients.Find(desk.PracticeId, clientId, cancel) is not { } client
                || client.Value.Tastes.Suspect.SetEquals(tastes.Suspect)
                    && client.Value.Tastes.Tolerated.SetEquals(tastes.Tolerated)
            )
                return;
            var before = HealthFacts.Of(ClientDetails.Of(client.Value));
            client.Value.Prefer(
                client.Value.Tastes with
                {
                    Suspect = tastes.Suspect,
                    Tolerated = tastes.Tolerated,
                }
            );
            var note = desk.Note("tastes-learnt", clientId, calendar.Now)
                .With(clientId, before, HealthFacts.Of(ClientDetails.Of(client.Value)));
            if (await clients.Save(client, note, cancel) is Saved<Client>)
                return;
        }
    }
}
