using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Handouts;
using Practice.Handouts.Content;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Portal;
using Practice.Store.Audit;
using Practice.Store.Practices;

namespace Practice.Service.Rehearsals;

/// <summary>Prints a rehearsal: the sheet for the client, the report for the file.</summary>
public sealed class PrintRehearsal(
    OpenRehearsal open,
    PracticeStore practices,
    GiveLink links,
    AuditLog audit,
    PracticeCalendar calendar
)
{
    /// <summary>The sheet to tick off, with a fresh private link to the phone pages as a code.</summary>
    /// <param name="desk">Who acts.</param>
    /// <param name="rehearsalId">The rehearsal.</param>
    /// <param name="site">Root of the site, for the address in the code.</param>
    /// <param name="numberFree">Whether it is asked for without numbers.</param>
    /// <param name="paper">Paper; null for the practice's own.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>The paper; null when the practice has no such rehearsal.</returns>
    public async Task<PrintedPlan?> Sheet(
        Desk desk,
        Guid rehearsalId,
        Uri site,
        bool numberFree,
        PaperSize? paper,
        CancellationToken cancel
    )
    {
        if (
            await open.Run(desk, rehearsalId, null, cancel) is not { } file
            || await practices.Find(desk.PracticeId, cancel) is not { Value: var practice }
        )
            return null;
        var rehearsal = file.Rehearsal.Value;
        var link = await links.Run(desk, rehearsal.RaceId, cancel);
        var options = new RehearsalSheetOptions
        {
            NumberFree = numberFree,
            Paper = paper,
            By = desk.Name,
            Today = calendar.Today,
            MassAllowed = file.MassAllowed,
            PhoneAddress = link is null ? null : new Uri(site, link.Path).AbsoluteUri,
            Language = rehearsal.Plan.Units == HouseholdUnits.UsCustomary ? "en-US" : "en-GB",
        };
        return await Print(
            desk,
            rehearsal,
            HandoutPdf.Render(RehearsalSheet.Build(rehearsal, practice, options)),
            "rehearsal",
            numberFree,
            cancel
        );
    }

    /// <summary>The report for the practice's file.</summary>
    /// <returns>The paper; null when the practice has no such rehearsal, or nothing was told yet.</returns>
    public async Task<PrintedPlan?> Report(
        Desk desk,
        Guid rehearsalId,
        PaperSize? paper,
        CancellationToken cancel
    )
    {
        if (
            await open.Run(desk, rehearsalId, null, cancel) is not { Review: { } review } file
            || await practices.Find(desk.PracticeId, cancel) is not { Value: var practice }
        )
            return null;
        var trial = new TrialReportCase
        {
            Rehearsal = file.Rehearsal.Value,
            Review = review,
            Suspects = file.Trials.Suspects,
            Diff = file.Came?.Diff,
            NextVersion = file.Came?.Version.Number,
            FoodName = file.Trials.Foods.NameOf,
            MassAllowed = file.MassAllowed,
            Today = calendar.Today,
            Paper = paper,
        };
        return await Print(
            desk,
            file.Rehearsal.Value,
            HandoutPdf.Render(TrialReport.Build(trial, practice)),
            "trial",
            false,
            cancel
        );
    }

    private async Task<PrintedPlan> Print(
        Desk desk,
        Rehearsal rehearsal,
        byte[] pdf,
        string what,
        bool isNumberFree,
        CancellationToken cancel
    )
    {
        await audit.Note(desk.Note($"{what}-printed", rehearsal.Id, calendar.Now), cancel);
        return new PrintedPlan(
            pdf,
            PaperName.Of(
                rehearsal.Plan.Header.ClientName,
                what,
                isNumberFree ? "number-free" : "",
                $"{rehearsal.RunOn:uuuu-MM-dd}"
            )
        );
    }
}
