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
    private DraftKeeper? keeper;
    private bool isMissing;
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
    public string? Improve { get; set; }

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

    private RaceWeekPlan Plan => keeper!.Plan;

    /// <summary>What stands on the bench: while a menu is being improved, the best so far.</summary>
    private RaceWeekPlan Shown => building?.Days is { } better ? Plan with { Days = better } : Plan;

    private bool IsDraft => keeper!.IsDraft;

    private PlanFile File => keeper!.File;

    private bool IsBusy => isWorking || building is not null;

    private string ScreeningAddress => $"/clients/{File.Client.Id}/screening";

    /// <summary>Only another version is opened anew: what was undone and done here must outlive a change of address.</summary>
    protected override Task OnParametersSetAsync() =>
        keeper?.File.Version.Value.Id == Id ? Task.CompletedTask : Open();

    private async Task Open()
    {
        var file = await OpenPlan.Run(Desk, Id, Leaving);
        isMissing = file is null;
        keeper = file is null ? null : new DraftKeeper(SaveDraft, Calendar, Desk, file);
        if (keeper is null)
            return;
        (refusal, changes, conflicts, explained) = (null, null, [], false);
        Check();
        if (Improve is null || !IsDraft)
            return;
        StateHasChanged();
        await Rebuild();
        Navigation.NavigateTo($"/plans/{Id}", replace: true);
    }

    private Task Edit(Func<RaceWeekPlan, RaceWeekPlan> edit)
    {
        changes = null;
        return Go(keeper!.History.Then(edit(Plan)));
    }

    private Task Go(PlanHistory next)
    {
        var saved = keeper!.Go(next, Leaving);
        (conflicts, explained, refusal) = ([], false, null);
        Check();
        return saved;
    }

    private void Check() => shortfalls = Kitchen.Check(File, Plan);

    private async Task TakeTheirs()
    {
        var saved = keeper!.TakeTheirs(Leaving);
        Check();
        await saved;
    }

    private async Task Rebalance(LocalDate day)
    {
        if (IsBusy)
            return;
        isWorking = true;
        try
        {
            var done = await Kitchen.Rebalance(File, Plan, day, Leaving);
            if (Leaving.IsCancellationRequested)
                return;
            isWorking = false;
            await Go(keeper!.History.Then(Plan.With(done.Day)));
            changes = done.Changes;
        }
        finally
        {
            isWorking = false;
        }
    }

    private async Task Rebuild()
    {
        if (IsBusy)
            return;
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
        var menu = await Kitchen.Build(File, Plan, progress, build.Token);
        building = null;
        if (Leaving.IsCancellationRequested)
            return;
        await Edit(p => p with { Days = menu.Days });
    }

    private void StopBuilding() => build?.Cancel();

    private async Task Explain()
    {
        if (IsBusy)
            return;
        (isWorking, isExplaining) = (true, true);
        try
        {
            conflicts = await Kitchen.Explain(File, Plan, Leaving);
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
        choice = choice.With(await Kitchen.Swaps(File, Plan, portion));
    }

    private async Task OpenAdditions((LocalDate Date, OccasionKind Kind) at)
    {
        choice = FoodQuestion.Add(at.Date, at.Kind, File.Foods);
        choice = choice.With(await Kitchen.Additions(File, Plan, at.Date, at.Kind));
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
        if (IsBusy)
            return;
        isWorking = true;
        try
        {
            await keeper!.Saving.Now();
            if (keeper.Saving.Standing != SaveStanding.Saved)
                return;
            refusal = IssueWords.Of(await Life.Issue.Run(Desk, File.Version, Leaving));
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
