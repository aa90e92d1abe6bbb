using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;
using Practice.Service.Desks;
using Practice.Store.Audit;
using Practice.Store.Plans;
using Practice.Store.Practices;

namespace Practice.Service.Plans;

/// <summary>What a paper should look like.</summary>
public enum PaperVariant
{
    /// <summary>Household measures, grams and carbohydrate.</summary>
    Full,

    /// <summary>Household words only.</summary>
    NumberFree,

    /// <summary>Everything in large type.</summary>
    LargePrint,
}

/// <summary>Which paper of a plan.</summary>
public enum PaperKind
{
    /// <summary>The loading plan.</summary>
    Loading,

    /// <summary>The whole race week.</summary>
    Week,

    /// <summary>The shopping list of the week.</summary>
    Shopping,

    /// <summary>The packing list.</summary>
    Packing,

    /// <summary>The race card, to be folded.</summary>
    Card,
}

/// <summary>A plan on paper.</summary>
/// <param name="Pdf">The file.</param>
/// <param name="FileName">A name that says whose plan it is, safe on every system.</param>
public sealed record PrintedPlan(byte[] Pdf, string FileName);

/// <summary>Prints a plan version; a draft says on every page that it is one.</summary>
public sealed class PrintPlan(
    PlanStore plans,
    PracticeStore practices,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <summary>The loading plan.</summary>
    public Task<PrintedPlan?> Run(
        Desk desk,
        Guid versionId,
        PaperSize? paper,
        PaperVariant variant,
        CancellationToken cancel
    ) => Run(desk, versionId, PaperKind.Loading, paper, variant, cancel);

    /// <param name="desk">Who acts.</param>
    /// <param name="versionId">Which version.</param>
    /// <param name="kind">Which paper.</param>
    /// <param name="paper">Paper; null for the practice's own.</param>
    /// <param name="variant">For whom; a number-free plan stays so whatever is asked.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>
    /// The paper; null when the practice has no such version, or the version has nothing for such a paper: no race week,
    /// no course.
    /// </returns>
    public async Task<PrintedPlan?> Run(
        Desk desk,
        Guid versionId,
        PaperKind kind,
        PaperSize? paper,
        PaperVariant variant,
        CancellationToken cancel
    )
    {
        if (
            await plans.Find(desk.PracticeId, versionId, cancel) is not { Value: var version }
            || await practices.Find(desk.PracticeId, cancel) is not { Value: var practice }
            || !Has(version.Plan, kind)
        )
            return null;
        var options = new HandoutOptions
        {
            Paper = paper,
            Variant = (HandoutVariant)variant,
            Version = version.Number,
            IssuedOn = version.IssuedAt is { } issued ? calendar.DayOf(issued) : null,
            IssuedBy = version.IssuedBy ?? "",
            Today = calendar.Today,
        };
        var pdf = HandoutPdf.Render(Build(kind)(version.Plan, practice, options));
        await audit.Note(desk.Note("plan-printed", versionId, calendar.Now), cancel);
        return new PrintedPlan(pdf, FileName(version, kind, variant));
    }

    /// <summary>Whether a plan has what a paper is about.</summary>
    public static bool Has(RaceWeekPlan plan, PaperKind kind)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return kind switch
        {
            PaperKind.Loading => true,
            PaperKind.Card => plan.Course is { Steps.IsEmpty: false },
            _ => plan.Week is not null,
        };
    }

    private static Func<RaceWeekPlan, PracticeProfile, HandoutOptions, HandoutDoc> Build(
        PaperKind kind
    ) =>
        kind switch
        {
            PaperKind.Week => WeekHandout.Build,
            PaperKind.Shopping => WeekHandout.ShoppingListOf,
            PaperKind.Packing => WeekHandout.PackingListOf,
            PaperKind.Card => RaceCard.Build,
            _ => LoadingHandout.Build,
        };

    private static string FileName(PlanVersion version, PaperKind kind, PaperVariant variant) =>
        PaperName.Of(
            version.Plan.Header.ClientName,
            version.Plan.Header.RaceName,
            kind == PaperKind.Loading ? "" : kind.ToString().ToLowerInvariant(),
            variant switch
            {
                PaperVariant.NumberFree => "number-free",
                PaperVariant.LargePrint => "large-print",
                _ => "",
            },
            $"v{version.Number}"
        );
}
