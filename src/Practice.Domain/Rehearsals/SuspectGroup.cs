using System.Collections.Immutable;
using System.Globalization;

namespace Practice.Domain.Rehearsals;

/// <summary>What a chance is called. Own rule.</summary>
public enum SuspectLabel
{
    /// <summary>Too little is known.</summary>
    Unknown,

    /// <summary>At most 0.05 after at least two clean full doses.</summary>
    Cleared,

    /// <summary>0.20 to below 0.50.</summary>
    Possible,

    /// <summary>0.50 to below 0.80.</summary>
    Suspect,

    /// <summary>0.80 and more.</summary>
    Likely,
}

/// <summary>A food and its chance to be a trigger.</summary>
/// <param name="FoodId">Key of the food.</param>
/// <param name="Prior">Chance before the trials.</param>
/// <param name="Chance">Chance after them.</param>
/// <param name="Label">What that is called.</param>
public sealed record SuspectFood(string FoodId, double Prior, double Chance, SuspectLabel Label);

/// <summary>A food, or several that were always eaten together in the same amounts.</summary>
/// <param name="Foods">The foods, most suspect first.</param>
/// <param name="AnyChance">Chance that at least one of them is a trigger.</param>
/// <param name="Exposures">Trials in which they were eaten.</param>
/// <param name="WithSymptoms">Those of them that ended in symptoms.</param>
/// <param name="CleanFullDoses">Those of them at full dose that stayed clean.</param>
public sealed record SuspectGroup(
    ImmutableArray<SuspectFood> Foods,
    double AnyChance,
    int Exposures,
    int WithSymptoms,
    int CleanFullDoses
)
{
    /// <summary>Always to be shown with the chances.</summary>
    public const string Disclaimer = "A pattern in few trials, not an allergy test.";

    // amounts are never weighed to the gram
    private const double FullDose = 0.95;
    private const int ClearingDoses = 2;

    /// <summary>Whether the trials can not tell its foods apart.</summary>
    public bool IsInseparable => Foods.Length > 1;

    /// <summary>Chance before the trials that at least one of its foods is a trigger: high wherever there are many.</summary>
    public double AnyPrior => 1 - Foods.Aggregate(1.0, (none, food) => none * (1 - food.Prior));

    /// <summary>A food of the group; null when it is not in it.</summary>
    public SuspectFood? Find(string foodId) => Foods.FirstOrDefault(f => f.FoodId == foodId);

    /// <summary>Chance of one of its foods; null when it is not in it.</summary>
    public double? ChanceOf(string foodId) => Find(foodId)?.Chance;

    /// <summary>What the trials say, in plain words with the number of exposures.</summary>
    /// <param name="name">Name of a food by its key.</param>
    public string Explain(Func<string, string> name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var foods = Names(name);
        var trials = (Exposures, WithSymptoms) switch
        {
            (1, 0) => "eaten in 1 trial, without symptoms",
            (1, _) => "eaten in 1 trial, with symptoms",
            (_, 0) => $"eaten in {Count(Exposures)} trials, none of them with symptoms",
            _ => $"eaten in {Count(Exposures)} trials, {Count(WithSymptoms)} of them with symptoms",
        };
        var reading = IsInseparable
            ? $"always eaten together, so the trials can not tell them apart: {Percent(Foods[0].Chance)} that "
                + $"{name(Foods[0].FoodId)} is a trigger ({Word(Foods[0].Label)}), {Percent(Foods[0].Prior)} before the trials; "
                + $"{Percent(AnyChance)} that any of them is, {Percent(AnyPrior)} before"
            : $"{Percent(Foods[0].Chance)} to be a trigger ({Word(Foods[0].Label)}), {Percent(Foods[0].Prior)} before the trials";
        return $"{foods}: {trials}; {reading}. {Disclaimer}";
    }

    // a first trial has all its foods in one group: nobody reads thirty names
    private string Names(Func<string, string> name)
    {
        const int all = 6;
        const int some = 4;
        var shown = Foods.Take(Foods.Length <= all ? all : some).Select(f => name(f.FoodId));
        var more = Foods.Length <= all ? "" : $" and {Count(Foods.Length - some)} more";
        return string.Join(", ", shown) + more;
    }

    internal static SuspectGroup Of(
        InseparableFoods foods,
        double[] counts,
        ImmutableArray<FoodTrial> trials
    )
    {
        var eaten = trials.Zip(foods.Doses).Where(trial => trial.Second > 0).ToList();
        var clean = eaten.Count(trial => trial.Second >= FullDose && !trial.First.HadSymptoms);
        return new(
            [
                .. foods
                    .Foods.Select((id, i) => Food(id, foods, i, counts, clean))
                    .OrderByDescending(food => food.Chance)
                    .ThenBy(food => food.FoodId, StringComparer.Ordinal),
            ],
            Math.Clamp(1 - counts[0], 0, 1),
            eaten.Count,
            eaten.Count(trial => trial.First.HadSymptoms),
            clean
        );
    }

    /// <summary>What a chance is called.</summary>
    /// <param name="chance">0 to 1.</param>
    /// <param name="cleanFullDoses">Trials at full dose that stayed clean.</param>
    public static SuspectLabel LabelOf(double chance, int cleanFullDoses) =>
        chance switch
        {
            >= 0.80 => SuspectLabel.Likely,
            >= 0.50 => SuspectLabel.Suspect,
            >= 0.20 => SuspectLabel.Possible,
            <= 0.05 when cleanFullDoses >= ClearingDoses => SuspectLabel.Cleared,
            _ => SuspectLabel.Unknown,
        };

    private static SuspectFood Food(
        string id,
        InseparableFoods foods,
        int index,
        double[] counts,
        int clean
    )
    {
        var chance = Math.Clamp(
            counts.Select((weight, count) => weight * foods.IsAmong(index, count)).Sum(),
            0,
            1
        );
        return new(id, foods.Priors[index], chance, LabelOf(chance, clean));
    }

    private static string Percent(double chance) =>
        Math.Round(100 * chance).ToString("0", CultureInfo.InvariantCulture) + " %";

    private static string Count(int trials) => trials.ToString(CultureInfo.InvariantCulture);

    private static string Word(SuspectLabel label) =>
        label switch
        {
            SuspectLabel.Likely => "likely",
            SuspectLabel.Suspect => "suspect",
            SuspectLabel.Possible => "possible",
            SuspectLabel.Cleared => "cleared",
            _ => "unknown",
        };
}
