using Practice.Domain.Practices;

namespace Practice.Store.Mail;

internal static class Outbox
{
    /// <summary>Puts a letter into the outbox, in the transaction of what causes it: both are on file, or neither is.</summary>
    public static void Post(this PracticeDb db, Letter letter)
    {
        db.Add(letter);
        db.Add(
            new LetterDue
            {
                LetterId = letter.Id,
                Writer = letter.PracticeId,
                DueAt = letter.WrittenAt,
            }
        );
    }
}
