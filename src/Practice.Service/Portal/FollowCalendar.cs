using Practice.Handouts.Calendar;

namespace Practice.Service.Portal;

/// <summary>The plan as a calendar that the client's own calendar program follows, behind the same private link.</summary>
public sealed class FollowCalendar(OpenLink open)
{
    /// <returns>
    /// The calendar as text, empty while no plan is out, so that a program which follows it takes back what no longer
    /// holds; null when the link opens nothing.
    /// </returns>
    public async Task<string?> Run(string secret, CancellationToken cancel) =>
        await open.Run(secret, isOpening: false, cancel) switch
        {
            null => null,
            { Plan: { } held } phone => PlanCalendar.Of(held.Plan, phone.RaceId, held.EditedAt),
            var phone => PlanCalendar.Empty(phone.RaceName),
        };
}
