using System.Security.Cryptography;
using System.Text;
using Practice.Domain.Clients;
using Practice.Domain.Plans;

namespace Practice.Service.Plans;

internal static class MenuRequests
{
    public static MenuRequest Of(RaceWeekPlan plan, EligibleFoods foods, Client client) =>
        new()
        {
            BodyMass = plan.Header.BodyMass,
            Days = plan.Days,
            Foods = foods.Allowed,
            Tastes = client.Tastes,
            Style = plan.Style,
            Units = plan.Units,
            Seed = SeedOf(plan.Header),
        };

    /// <summary>From who and what for, so that building again gives the same menu, and two clients get different ones.</summary>
    private static int SeedOf(PlanHeader header)
    {
        var text = $"{header.ClientName}|{header.RaceName}|{header.RaceStart:uuuu-MM-dd}";
        return BitConverter.ToInt32(SHA256.HashData(Encoding.UTF8.GetBytes(text))) & int.MaxValue;
    }
}
