using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Web.Parts;

namespace Practice.Web.Features.Letters;

/// <summary>Where a letter is.</summary>
internal static class LetterWords
{
    public static string Standing(Letter letter, PracticeCalendar calendar) =>
        letter.SentAt is { } sent ? $"sent {Say.ShortDay(calendar.DayOf(sent))}"
        : letter.GivenUpAt is not null ? $"not sent: {letter.Problem}"
        : letter.Problem.Length > 0 ? $"waits: {letter.Problem}"
        : "in the outbox";
}
