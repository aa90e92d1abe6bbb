using Practice.Domain.Plans;
using Practice.Service.Portal;
using Practice.Web.Features.Portal.Answers;
using Practice.Web.Features.Portal.Pages;

namespace Practice.Web.Features.Portal.Fields;

/// <summary>The amounts of a food to choose from, in the same measure in which it was planned.</summary>
internal static class PortionAmounts
{
    /// <summary>More of it than four times the plan is not taken in.</summary>
    private const int Most = 4;

    /// <param name="planned">The portion as planned.</param>
    /// <param name="phone">Whose words are used.</param>
    /// <param name="told">What was told before; stays to be chosen though it be no serving of the food.</param>
    public static IReadOnlyList<(string Part, string Words)> Of(
        Portion planned,
        PhoneFile phone,
        string told
    )
    {
        var amounts = planned
            .Serving.Steps.Where(steps => steps != planned.Steps && steps <= Most * planned.Steps)
            .Select(steps =>
                (
                    Part: PageAnswers.Plain((decimal)steps / planned.Steps),
                    Words: PhoneSay.Amount(
                        planned with
                        {
                            Steps = steps,
                        },
                        phone.Units,
                        phone.IsNumberFree
                    )
                )
            )
            .DistinctBy(amount => amount.Words)
            .ToList();
        if (told.Length > 0 && amounts.TrueForAll(a => a.Part != told))
            amounts.Add((told, "as told before"));
        return amounts;
    }
}
