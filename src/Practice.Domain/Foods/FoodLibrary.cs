using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using Practice.Domain.Foods.Own;

namespace Practice.Domain.Foods;

/// <summary>
/// A set of foods to choose from. The standard one comes with the program, as JSON beside this file: how its values
/// were made and how to add a food is told in <c>docs/foods.md</c>.
/// </summary>
public sealed class FoodLibrary
{
    private static readonly Lazy<FoodLibrary> StandardOnce = new(ReadStandard);

    private readonly FrozenDictionary<string, Food> byId;
    private readonly ImmutableArray<(Food Food, ImmutableArray<string> Words)> words;

    /// <summary>Makes a library of the given foods.</summary>
    /// <param name="foods">The foods to choose from.</param>
    /// <param name="retired">Foods that nobody chooses any more, but that plans and trials still name.</param>
    /// <exception cref="InvalidDataException">Two foods have the same id.</exception>
    public FoodLibrary(IEnumerable<Food> foods, IEnumerable<Food>? retired = null)
    {
        All = [.. foods];
        Retired = [.. retired ?? []];
        var seen = new Dictionary<string, Food>(StringComparer.Ordinal);
        foreach (var food in All.Concat(Retired))
        {
            if (!seen.TryAdd(food.Id, food))
            {
                throw new InvalidDataException($"Food '{food.Id}', field 'id': used twice.");
            }
        }

        byId = seen.ToFrozenDictionary(StringComparer.Ordinal);
        words = [.. All.Select(food => (food, NameWords.Of($"{food.Name} {food.UsName}")))];
    }

    /// <summary>The foods that come with the program.</summary>
    /// <exception cref="InvalidDataException">A row is wrong; the message names the food and the field.</exception>
    public static FoodLibrary Standard => StandardOnce.Value;

    /// <summary>All foods, in the order of the aisles.</summary>
    public ImmutableArray<Food> All { get; }

    /// <summary>Foods that nobody chooses any more.</summary>
    public ImmutableArray<Food> Retired { get; }

    /// <summary>The food with that id, retired or not; null when there is none.</summary>
    public Food? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>The name of a food; a key that is not known stands for itself.</summary>
    public string NameOf(string id) => Find(id)?.Name ?? id;

    /// <summary>The standard library as a practice uses it: with its own measures, and its own foods among the others.</summary>
    public static FoodLibrary With(
        IReadOnlyCollection<OwnFood> foods,
        IReadOnlyCollection<OwnMeasure> measures
    )
    {
        ArgumentNullException.ThrowIfNull(foods);
        ArgumentNullException.ThrowIfNull(measures);
        if (foods.Count == 0 && measures.Count == 0)
        {
            return Standard;
        }

        var ofFood = measures.ToLookup(m => m.FoodId, m => m.Measure, StringComparer.Ordinal);
        return new(
            Standard
                .All.Concat(foods.Where(f => f.RetiredAt is null).Select(f => f.Food))
                .Select(food => food.WithMeasures(ofFood[food.Id]))
                .OrderBy(food => food.Group),
            foods.Where(f => f.RetiredAt is not null).Select(f => f.Food)
        );
    }

    /// <summary>
    /// Foods whose UK or US name has, for each word typed, a word that begins with it; accents and case do not
    /// matter. Names that begin with what was typed come first. Nothing typed finds everything.
    /// </summary>
    public ImmutableArray<Food> Search(string text)
    {
        var typed = NameWords.Of(text);
        return
        [
            .. words
                .Where(entry => typed.All(part => entry.Words.Any(word => Begins(word, part))))
                .OrderByDescending(entry => !typed.IsEmpty && Begins(entry.Words[0], typed[0]))
                .Select(entry => entry.Food),
        ];
    }

    private static bool Begins(string word, string part) =>
        word.StartsWith(part, StringComparison.Ordinal);

    private static FoodLibrary ReadStandard()
    {
        var assembly = Assembly.GetExecutingAssembly();
        var files = assembly
            .GetManifestResourceNames()
            .Where(name => name.Contains(".Foods.Library.", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);
        return new(
            files
                .SelectMany(name =>
                {
                    using var stream = assembly.GetManifestResourceStream(name)!;
                    return FoodFile.Read(stream);
                })
                .OrderBy(food => food.Group)
        );
    }
}
