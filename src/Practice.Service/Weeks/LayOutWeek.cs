using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Plans.Weeks;
using Practice.Service.Desks;
using Practice.Service.Plans;

namespace Practice.Service.Weeks;

/// <summary>
/// Lays out the race week of a plan: for plans that have none yet, and anew when race, weather or client changed. What a
/// hand wrote into it stays, and so does the rest of the plan.
/// </summary>
public sealed class LayOutWeek(
    RaceDayMenus menus,
    Stove stove,
    SaveDraft save,
    PracticeCalendar calendar
)
{
    /// <param name="desk">Who acts.</param>
    /// <param name="file">The draft on the workbench.</param>
    /// <param name="plan">The plan as it stands there.</param>
    /// <param name="cancel">Cancels.</param>
    /// <exception cref="InvalidOperationException">The version is issued or withdrawn.</exception>
    public async Task<SaveOutcome<PlanVersion>> Run(
        Desk desk,
        PlanFile file,
        RaceWeekPlan plan,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(plan);
        var week = WeekLayout
            .Of(plan, file.Client, file.Race, file.Screening.Adjustments, calendar.Today)
            .Keeping(plan.Week);
        var filled = await stove.Run(() =>
            menus.Fill(plan with { Week = week }, file.Foods, file.Client, cancel)
        );
        return await save.Run(desk, file.Version, filled, cancel);
    }
}
