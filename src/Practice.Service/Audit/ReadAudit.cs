using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Store.Audit;

namespace Practice.Service.Audit;

/// <summary>What is asked of the audit; null asks for all.</summary>
/// <param name="AccountId">Who acted.</param>
/// <param name="What">What was done.</param>
/// <param name="About">To which client, race, plan or member.</param>
/// <param name="First">From this day on.</param>
/// <param name="Last">Up to this day, included.</param>
public sealed record AuditQuestion(
    Guid? AccountId = null,
    string? What = null,
    Guid? About = null,
    LocalDate? First = null,
    LocalDate? Last = null
);

/// <summary>A page of the audit.</summary>
/// <param name="Lines">The lines, the latest first.</param>
/// <param name="Subjects">What lines are about, by key; nothing for what is not on file any more.</param>
/// <param name="HasMore">Whether there are earlier ones.</param>
public sealed record AuditSheet(
    ImmutableArray<AuditEntry> Lines,
    ImmutableDictionary<Guid, AuditSubject> Subjects,
    bool HasMore
);

/// <summary>Reads the audit: the owner's, since it says who did what.</summary>
public sealed class ReadAudit(AuditLog audit, PracticeCalendar calendar)
{
    public const int PageSize = 50;
    private const int MostExported = 50_000;

    /// <param name="desk">Who acts.</param>
    /// <param name="question">What is asked.</param>
    /// <param name="page">Which page, from 0.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<AuditSheet> Run(
        Desk desk,
        AuditQuestion question,
        int page,
        CancellationToken cancel
    )
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var found = await audit.Search(
            desk.PracticeId,
            Filter(question),
            Math.Max(0, page) * PageSize,
            PageSize + 1,
            cancel
        );
        var lines = found.Take(PageSize).ToImmutableArray();
        return new AuditSheet(
            lines,
            await audit.Subjects(desk.PracticeId, lines, cancel),
            found.Length > PageSize
        );
    }

    /// <summary>The same as a table for other programs; reading it out is noted as well.</summary>
    public async Task<byte[]> Export(Desk desk, AuditQuestion question, CancellationToken cancel)
    {
        NotAllowedException.Unless(desk.MayRunPractice);
        var lines = await audit.Search(desk.PracticeId, Filter(question), 0, MostExported, cancel);
        await audit.Note(desk.Note("audit-exported", desk.PracticeId, calendar.Now), cancel);
        return AuditTable.Write(lines, await audit.Subjects(desk.PracticeId, lines, cancel));
    }

    private AuditFilter Filter(AuditQuestion question) =>
        new(
            question.AccountId,
            question.What,
            question.About,
            question.First is { } first ? calendar.StartOf(first) : null,
            question.Last is { } last ? calendar.StartOf(last.PlusDays(1)) : null
        );
}
