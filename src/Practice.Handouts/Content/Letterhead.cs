using System.Collections.Immutable;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>What every paper of a plan has in common: title, head, foot, and who stands behind it.</summary>
internal static class Letterhead
{
    /// <summary>A paper with these blocks.</summary>
    public static HandoutDoc Paper(
        string title,
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options,
        Reader reader,
        ImmutableArray<Block> blocks
    )
    {
        var (client, race) = (plan.Header.ClientName, plan.Header.RaceName);
        return new()
        {
            Title = $"{title} for {client}: {race}",
            Language = options.Language,
            Author = options.IssuedBy.Length > 0 ? options.IssuedBy : practice.Name,
            Date = options.IssuedOn ?? options.Today,
            Practice = practice,
            Paper = options.Paper ?? practice.Paper,
            IsLargePrint = reader.IsLargePrint,
            RunningHead = $"{client} · {race} · {reader.Dates.Date(plan.Header.RaceStart.Date)}",
            Foot = Foot(plan, practice, options, reader),
            Blocks = blocks,
        };
    }

    private static ImmutableArray<string> Foot(
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
        return [$"{life} · prepared for {plan.Header.ClientName}", Contact(practice)];
    }

    /// <summary>Whose paper it is: name, registration and contact in one line.</summary>
    public static string Contact(PracticeProfile practice) =>
        string.Join(
            " · ",
            new[] { practice.Name, practice.RegistrationLine, practice.Footer }.Where(t =>
                t.Length > 0
            )
        );
}
