using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Rehearsals;
using Practice.Service.Portal;

namespace Practice.Web.Features.Portal.Answers;

/// <summary>From the fields of the page to what a client told, and back.</summary>
internal static class FeedbackAnswers
{
    /// <summary>The name of this entry: sent twice under it, it counts once.</summary>
    public const string Key = "key";
    public const string Breakfast = "breakfast";
    public const string Vomited = "vomited";
    public const string Note = "note";

    public static ImmutableArray<WarningSign> Signs { get; } = [.. Enum.GetValues<WarningSign>()];

    public static string Sign(WarningSign sign) => $"sign.{sign}";

    /// <summary>What the fields tell; look at <see cref="PageAnswers.Refusals"/> before it is used.</summary>
    public static Feedback Read(PageAnswers answers, PhoneRehearsal file)
    {
        var phone = file.Phone;
        var earlier = file.Rehearsal.Feedback;
        var told = new Feedback
        {
            ReceivedAt = NodaConstants.UnixEpoch,
            Occasions = MealAnswers.Read(answers, file.Sittings, earlier),
            BreakfastPart = file.Details.Breakfast is null
                ? null
                : PartAnswers.Read(answers, Breakfast),
            Symptoms = SymptomAnswers.Read(answers),
            WarningSigns = [.. Signs.Where(sign => answers.Ticked(Sign(sign)))],
            Vomited = answers.Ticked(Vomited),
            Run = RunAnswers.Read(answers, file.Details.RunFuel, phone.IsNumberFree, earlier?.Run),
            Note = answers.Text(Note),
        };
        return BodyAnswers.Read(answers, told, phone);
    }

    /// <summary>The fields as they stand when a rehearsal is opened: what was told before, or nothing.</summary>
    public static PageAnswers Of(PhoneRehearsal file)
    {
        var answers = new PageAnswers();
        if (file.Rehearsal.Feedback is not { } told)
            return answers;
        MealAnswers.Write(answers, file.Sittings, told);
        PartAnswers.Write(answers, Breakfast, told.BreakfastPart);
        SymptomAnswers.Write(answers, told.Symptoms);
        foreach (var sign in told.WarningSigns)
            answers.Tick(Sign(sign), true);
        answers.Tick(Vomited, told.Vomited);
        RunAnswers.Write(answers, file.Details.RunFuel, file.Phone.IsNumberFree, told);
        BodyAnswers.Write(answers, told, file.Phone);
        answers[Note] = told.Note;
        return answers;
    }
}
