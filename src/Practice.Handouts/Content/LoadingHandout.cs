using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>The loading plan as a paper: every word and rounded number on it. Pure; layout adds nothing.</summary>
public static class LoadingHandout
{
    /// <summary>Builds the paper of a plan.</summary>
    public static HandoutDoc Build(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(options);
        var reader = Reader.Of(plan, options);
        if (reader.IsNumberFree)
            plan = WithoutNumbers.Of(plan);
        var (client, race) = (plan.Header.ClientName, plan.Header.RaceName);
        return new()
        {
            Title = $"Carbohydrate-loading plan for {client}: {race}",
            Language = options.Language,
            Author = options.IssuedBy.Length > 0 ? options.IssuedBy : practice.Name,
            Date = options.IssuedOn ?? options.Today,
            Practice = practice,
            Paper = options.Paper ?? practice.Paper,
            IsLargePrint = reader.IsLargePrint,
            RunningHead = $"{client} · {race} · {reader.Dates.Date(plan.Header.RaceStart.Date)}",
            Foot = Foot(plan, practice, options, reader),
            Blocks =
            [
                CoverPart.Band(plan, options, reader),
                CoverPart.InShort(plan, reader),
                .. CoverPart.Note(plan, options),
                .. OverviewPart.Blocks(plan, reader),
                .. AdvicePart.Blocks(plan),
                .. plan.Days.SelectMany(day => DayPart.Blocks(day, plan, reader)),
                .. ShoppingPart.Blocks(plan, reader),
            ],
        };
    }

    private static System.Collections.Immutable.ImmutableArray<string> Foot(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options,
        Reader reader
    )
    {
        var by = options.IssuedBy.Length > 0 ? $" by {options.IssuedBy}" : "";
        var life = options.IssuedOn is { } day
            ? $"Version {options.Version}, issued {reader.Dates.Date(day)}{by}"
            : $"Draft of version {options.Version}: not issued, not to be followed";
        return
        [
            $"{life} · prepared for {plan.Header.ClientName}",
            string.Join(
                " · ",
                new[] { practice.Name, practice.RegistrationLine, practice.Footer }.Where(t =>
                    t.Length > 0
                )
            ),
        ];
    }
}
