using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Web.Features.Plans.Workbench;
using Practice.Web.Parts;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Features.Plans;

/// <summary>The workbench: what is on the plates, what it is held against, and every way to change it.</summary>
public sealed partial class PlanPage
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(700);

    private PlanFile? file;
    private PlanHistory history = null!;
    private bool isMissing;
    private SaveStanding saving;
    private LocalTime? savedAt;
    private CancellationTokenSource? pause;
    private OnFile<PlanVersion>? theirs;
    private MenuProgress? building;
    private CancellationTokenSource? build;
    private bool isWorking;
    private bool isExplaining;
    private bool explained;
    private string? refusal;
    private Ask asked;
    private FoodQuestion? choice;
    private ImmutableArray<PortionChange>? changes;
    private IReadOnlyList<Shortfall> shortfalls = [];
    private IReadOnlyList<MenuConflict> conflicts = [];

    /// <summary>Key of the plan version.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>Whether a draft just begun shall be improved at once, before the practitioner's eyes.</summary>
    [SupplyParameterFromQuery]
    public bool Improve { get; set; }

    [Inject]
    internal OpenPlan OpenPlan { get; set; } = null!;

    [Inject]
    internal Kitchen Kitchen { get; set; } = null!;

    [Inject]
    internal SaveDraft SaveDraft { get; set; } = null!;

    [Inject]
    internal PlanLife Life { get; set; } = null!;

    [Inject]
    internal PracticeCalendar Calendar { get; set; } = null!;

    [Inject]
    internal NavigationManager Navigation { get; set; } = null!;

    /// <summary>What is done only for a reason that is kept.</summary>
    private enum Ask
    {
        Nothing,
        NewVersion,
        Withdraw,
    }

    private RaceWeekPlan Plan => history.Present;

    /// <summary>What stands on the bench: while a menu is being improved, the best so far.</summary>
    private RaceWeekPlan Shown => building?.Days is { } better ? Plan with { Days = better } : Plan;

    private bool IsDraft => file!.Version.Value.Status == PlanStatus.Draft;

    private bool IsBusy => isWorking || building is not null;

    private string ScreeningAddress => $"/clients/{file!.Client.Id}/screening";

    /// <summary>Only another version is opened anew: what was undone and done here must outlive a change of address.</summary>
    protected override Task OnParametersSetAsync() =>
        file?.Version.Value.Id == Id ? Task.CompletedTask : Open();

    private async Task Open()
    {
        file = await OpenPlan.Run(Desk, Id, Leaving);
        isMissing = file is null;
        if (file is null)
            return;
        history = PlanHistory.Of(file.Version.Value.Plan);
        (saving, savedAt) = (SaveStanding.Saved, null);
        (refusal, theirs, changes, conflicts, explained) = (null, null, null, [], false);
        Check();
        if (!Improve || !IsDraft)
            return;
        StateHasChanged();
        await Rebuild();
        Navigation.NavigateTo($"/plans/{Id}", replace: true);
    }

    private Task Edit(Func<RaceWeekPlan, RaceWeekPlan> edit)
    {
        changes = null;
        return Go(history.Then(edit(Plan)));
    }

    private async Task Go(PlanHistory next)
    {
        history = next;
        (conflicts, explained, refusal) = ([], false, null);
        Check();
        await SaveSoon();
    }

    private void Check() => shortfalls = Kitchen.Check(file!, Plan);

    /// <summary>Saves when the hand has rested for a moment: one save for a run of clicks.</summary>
    private async Task SaveSoon()
    {
        saving = SaveStanding.Saving;
        if (pause is not null)
            await pause.CancelAsync();
        pause = CancellationTokenSource.CreateLinkedTokenSource(Leaving);
        var mine = pause;
        try
        {
            await Task.Delay(Pause, mine.Token);
        }
        catch (OperationCanceledException) when (!Leaving.IsCancellationRequested)
        {
            return;
        }
        catch (OperationCanceledException)
        {
            // left within the moment: what was done must not be lost
        }
        await Save();
    }

    private async Task Save()
    {
        saving = SaveStanding.Saving;
        try
        {
            switch (await SaveDraft.Run(Desk, file!.Version, Plan, CancellationToken.None))
            {
                case Saved<PlanVersion> { Now: var now }:
                    file = file with { Version = now };
                    (saving, savedAt) = (SaveStanding.Saved, Calendar.TimeNow);
                    break;
                case Conflict<PlanVersion> { Theirs: var there }:
                    (saving, theirs) = (SaveStanding.NotSaved, there);
                    break;
            }
        }
        catch (Exception e) when (e is System.Data.Common.DbException or TimeoutException)
        {
            saving = SaveStanding.NotSaved;
        }
    }

    private Task TakeTheirs()
    {
        file = file! with { Version = theirs! };
        var their = theirs!.Value.Plan;
        theirs = null;
        return Go(history.Then(their));
    }

    private async Task Rebalance(LocalDate day)
    {
        isWorking = true;
        try
        {
            var done = await Kitchen.Rebalance(file!, Plan, day, Leaving);
            if (Leaving.IsCancellationRequested)
                return;
            isWorking = false;
            await Go(history.Then(Plan.With(done.Day)));
            changes = done.Changes;
        }
        finally
        {
            isWorking = false;
        }
    }

    private async Task Rebuild()
    {
        build = CancellationTokenSource.CreateLinkedTokenSource(Leaving);
        building = new MenuProgress("Choosing meals", 0, null, 0);
        var progress = new Progress<MenuProgress>(p =>
        {
            if (building is null)
                return;
            // a word of progress brings days only when they are better than those before
            building = p with
            {
                Days = p.Days ?? building.Days,
            };
            _ = InvokeAsync(StateHasChanged);
        });
        var menu = await Kitchen.Build(file!, Plan, progress, build.Token);
        building = null;
        if (Leaving.IsCancellationRequested)
            return;
        await Edit(p => p with { Days = menu.Days });
    }

    private void StopBuilding() => build?.Cancel();

    private async Task Explain()
    {
        (isWorking, isExplaining) = (true, true);
        try
        {
            conflicts = await Kitchen.Explain(file!, Plan, Leaving);
            explained = true;
        }
        finally
        {
            (isWorking, isExplaining) = (false, false);
        }
    }

    private async Task Relax(Relaxation relaxation)
    {
        await Edit(p => p.Relax(relaxation));
        await Rebalance(relaxation.Date);
    }

    private async Task OpenSwaps(PortionRef portion)
    {
        choice = FoodQuestion.Swap(Plan, portion);
        choice = choice.With(await Kitchen.Swaps(file!, Plan, portion));
    }

    private async Task OpenAdditions((LocalDate Date, OccasionKind Kind) at)
    {
        choice = FoodQuestion.Add(at.Date, at.Kind, file!.Foods);
        choice = choice.With(await Kitchen.Additions(file, Plan, at.Date, at.Kind));
    }

    private Task Choose(Portion portion)
    {
        var question = choice!;
        choice = null;
        return Edit(p =>
            question.Replaces is { } old
                ? p.Swap(old, portion)
                : p.Add(question.Date, question.Kind, portion)
        );
    }

    private async Task Issue()
    {
        if (pause is not null)
            await pause.CancelAsync();
        await Save();
        if (saving != SaveStanding.Saved)
            return;
        isWorking = true;
        try
        {
            refusal = IssueWords.Of(await Life.Issue.Run(Desk, file!.Version, Leaving));
            if (refusal is null)
                await Open();
        }
        finally
        {
            isWorking = false;
        }
    }

    private async Task BeginNext(string reason)
    {
        asked = Ask.Nothing;
        if (await Life.Begin.Run(Desk, Id, reason, Leaving) is { } next)
            Navigation.NavigateTo($"/plans/{next}");
    }

    private async Task Withdraw(string reason)
    {
        asked = Ask.Nothing;
        await Life.Withdraw.Run(Desk, Id, reason, Leaving);
        await Open();
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            build?.Dispose();
        }
        base.Dispose(disposing);
    }
}
