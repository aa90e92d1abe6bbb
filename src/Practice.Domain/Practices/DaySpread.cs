using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;

namespace Practice.Domain.Practices;

/// <summary>
/// A practice's own spread of a day: the sittings of the house with other shares and other times, near enough to the
/// usual ones that the eve and the part days still follow from them. Own rule: 3 to 40 % a sitting, an hour either way,
/// 45 min apart.
/// </summary>
public static class DaySpread
{
    private const decimal LeastShare = 0.03m;
    private const decimal MostShare = 0.40m;
    private const int EitherWayMin = 60;
    private const int ApartMin = 45;

    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture(
        "HH:mm"
    );

    /// <summary>Why sittings are as big and as late as they are; says so where a practice has its own spread.</summary>
    /// <param name="chosen">The sittings of a full day.</param>
    public static Basis BasisOf(ImmutableArray<Sitting> chosen)
    {
        var house = DayShape.Of(chosen.Length);
        return new(
            "Aim of a sitting = its share × carbohydrate of the day; on the eve the evening meal moves to 12 to 14 h before the start",
            [.. chosen.Select(s => new BasisInput(Name(s), InWords(s)))],
            [DayShape.Source],
            chosen.SequenceEqual(house)
                ? null
                : $"The practice's own spread. The house's: {string.Join(", ", house.Select(InWords))}."
        );
    }

    /// <summary>A spread that makes sense.</summary>
    /// <param name="sittings">The practice's own spread.</param>
    /// <param name="occasions">How many sittings its days have, 5 to 7.</param>
    /// <returns>The same; empty where it is the house's own.</returns>
    /// <exception cref="ArgumentException">It does not; the message says why.</exception>
    public static ImmutableArray<Sitting> Checked(ImmutableArray<Sitting> sittings, int occasions)
    {
        var house = DayShape.Of(occasions);
        if (sittings.IsDefaultOrEmpty || sittings.SequenceEqual(house))
            return [];
        if (!sittings.Select(s => s.Kind).SequenceEqual(house.Select(s => s.Kind)))
            throw new ArgumentException("The spread: it has other occasions than the day.");
        foreach (var (own, usual) in sittings.Zip(house))
            if ((ShareProblem(own) ?? TimeProblem(own, usual)) is { } problem)
                throw new ArgumentException($"{Name(own)}: {problem}");
        return Problem(sittings) is { } whole
            ? throw new ArgumentException($"The spread: {whole}")
            : sittings;
    }

    /// <summary>What is wrong with the share of a sitting; null when nothing is.</summary>
    public static string? ShareProblem(Sitting own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return own.Share is < LeastShare or > MostShare
            ? $"Between {Percent(LeastShare)} and {Percent(MostShare)}."
            : null;
    }

    /// <summary>What is wrong with the time of a sitting; null when nothing is.</summary>
    public static string? TimeProblem(Sitting own, Sitting usual)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(usual);
        var (earliest, latest) = (
            usual.Time.PlusMinutes(-EitherWayMin),
            usual.Time.PlusMinutes(EitherWayMin)
        );
        return own.Time < earliest || own.Time > latest
            ? $"Between {Clock.Format(earliest)} and {Clock.Format(latest)}."
            : null;
    }

    /// <summary>What is wrong with a spread as a whole; null when nothing is.</summary>
    public static string? Problem(ImmutableArray<Sitting> sittings)
    {
        var sum = sittings.Sum(s => s.Share);
        if (sum != 1)
            return $"The shares make {Percent(sum)}: they have to make 100 %.";
        foreach (var (before, after) in sittings.Zip(sittings.Skip(1)))
            if (after.Time < before.Time.PlusMinutes(ApartMin))
                return $"{Name(after)} comes less than {ApartMin} min after {before.Kind.InWords()}.";
        return null;
    }

    private static string InWords(Sitting sitting) =>
        $"{Percent(sitting.Share)} at {Clock.Format(sitting.Time)}";

    private static string Name(Sitting sitting)
    {
        var words = sitting.Kind.InWords();
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    private static string Percent(decimal share) => $"{Rounding.Shown(share * 100, 0)} %";
}
