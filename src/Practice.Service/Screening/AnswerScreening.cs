using Practice.Domain.Caseload;
using Practice.Domain.Screening;
using Practice.Service.Audit;
using Practice.Service.Desks;
using Practice.Store.Screening;

namespace Practice.Service.Screening;

/// <summary>Records answers to the health questions; the screening counts from today.</summary>
public sealed class AnswerScreening(ScreeningStore screenings, PracticeCalendar calendar)
{
    /// <returns>The screening as it now stands on file.</returns>
    public async Task<SaveOutcome<ScreeningRecord>> Run(
        Desk desk,
        Guid clientId,
        ScreeningAnswers answers,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(answers);
        answers.Check();
        var note = desk.Note("screening-answered", clientId, calendar.Now);
        if (await screenings.Of(desk.PracticeId, clientId, cancel) is { } onFile)
        {
            note.With(clientId, HealthFacts.Of(onFile.Value.Answers), HealthFacts.Of(answers));
            onFile.Value.Answer(answers, calendar.Today);
            return await screenings.Save(onFile, note, cancel);
        }
        note.With(clientId, HealthFacts.Of(ScreeningAnswers.None), HealthFacts.Of(answers));
        var record = ScreeningRecord.Take(desk.PracticeId, clientId, answers, calendar.Today);
        return new Saved<ScreeningRecord>(await screenings.Add(record, note, cancel));
    }
}
