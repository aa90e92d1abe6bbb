using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Practices;
using Practice.Service.Weeks;
using Practice.Web.Features.Plans;
using Practice.Web.Features.Plans.Workbench;

namespace Practice.Web.Features.Weeks;

/// <summary>The race week: every day from a week before, the meals of the race day, and what goes with them.</summary>
public sealed partial class WeekPage
{
    private DraftKeeper? keeper;
    private bool isMissing;
    private bool isWorking;
    private FuelStory? story;
    private FoodQuestion? choice;
    private RaceDayPart choosing;
    private ImmutableArray<string> ideas = [];
    private IReadOnlyList<Shortfall> morningMisses = [];
    private IReadOnlyList<Shortfall> recoveryMisses = [];

    /// <summary>Key of the plan version.</summary>
    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    internal OpenPlan OpenPlan { get; set; } = null!;

    [Inject]
    internal OpenPractice OpenPractice { get; set; } = null!;

    [Inject]
    internal LayOutWeek LayOutWeek { get; set; } = null!;

    [Inject]
    internal RaceDayMenus Menus { get; set; } = null!;

    [Inject]
    internal Kitchen Kitchen { get; set; } = null!;

    [Inject]
    internal SaveDraft SaveDraft { get; set; } = null!;

    [Inject]
    internal PracticeCalendar Calendar { get; set; } = null!;

    private RaceWeekPlan Plan => keeper!.Plan;

    private bool IsDraft => keeper!.IsDraft;

    protected override async Task OnParametersSetAsync()
    {
        if (keeper?.File.Version.Value.Id == Id)
            return;
        var file = await OpenPlan.Run(Desk, Id, Leaving);
        isMissing = file is null;
        keeper = file is null ? null : new DraftKeeper(SaveDraft, Calendar, Desk, file);
        ideas = (await OpenPractice.Run(Desk, Leaving)).Defaults.MealIdeas;
        Read();
        await FollowClient();
    }

    /// <summary>A draft follows where the client lives by now.</summary>
    private async Task FollowClient()
    {
        if (
            keeper is { IsDraft: true, File.Client.ZoneId: { } home, Plan.Week: not null }
            && Plan.LivingIn(home) is var moved
            && moved.Week!.ClientZoneId != Plan.Week!.ClientZoneId
        )
            await Edit(_ => moved);
    }

    private async Task Edit(Func<RaceWeekPlan, RaceWeekPlan> edit)
    {
        var saved = keeper!.Edit(edit, Leaving);
        Read();
        await saved;
    }

    private Task EditPart(RaceDayPart part, Func<RaceWeekPlan, RaceWeekPlan> edit) =>
        Edit(p => p.EditPart(part, edit));

    /// <summary>What follows from the plan as it stands.</summary>
    private void Read()
    {
        if (keeper is null || Plan.Week is null)
            return;
        story = FuelStory.Of(Plan);
        morningMisses = Kitchen.Check(keeper.File, Plan.AsPlan(RaceDayPart.Morning));
        recoveryMisses = Kitchen.Check(keeper.File, Plan.AsPlan(RaceDayPart.Recovery));
    }

    private Task LayOut() =>
        Work(() => keeper!.Run(_ => LayOutWeek.Run(Desk, keeper.File, Plan, Leaving)));

    private Task Rebalance(RaceDayPart part) =>
        Work(async () =>
        {
            var meals = Plan.AsPlan(part);
            var done = await Kitchen.Rebalance(keeper!.File, meals, meals.Days[0].Date, Leaving);
            await Edit(p => p.WithPart(part, done.Day));
        });

    private Task Refill(RaceDayPart part) =>
        Work(async () =>
        {
            var menu = await Menus.Other(keeper!.File, Plan, part, Leaving);
            await Edit(p => p.WithPart(part, menu));
        });

    private async Task Work(Func<Task> work)
    {
        if (isWorking)
            return;
        isWorking = true;
        try
        {
            await work();
            Read();
        }
        finally
        {
            isWorking = false;
        }
    }

    private async Task OpenSwaps(RaceDayPart part, PortionRef portion)
    {
        choosing = part;
        var meals = Plan.AsPlan(part);
        choice = FoodQuestion.Swap(meals, portion);
        choice = choice.With(await Kitchen.Swaps(keeper!.File, meals, portion));
    }

    private async Task OpenAdditions(RaceDayPart part, (LocalDate Date, OccasionKind Kind) at)
    {
        choosing = part;
        choice = FoodQuestion.Add(at.Date, at.Kind, keeper!.File.Foods);
        choice = choice.With(
            await Kitchen.Additions(keeper.File, Plan.AsPlan(part), at.Date, at.Kind)
        );
    }

    private Task Choose(Portion portion)
    {
        var question = choice!;
        choice = null;
        return EditPart(
            choosing,
            p =>
                question.Replaces is { } old
                    ? p.Swap(old, portion)
                    : p.Add(question.Date, question.Kind, portion)
        );
    }
}
