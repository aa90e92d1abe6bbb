using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;

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
    /// <exception cref="InvalidDataException">Two foods have the same id.</exception>
    public FoodLibrary(IEnumerable<Food> foods)
    {
        All = [.. foods];
        var seen = new Dictionary<string, Food>(StringComparer.Ordinal);
        foreach (var food in All)
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

    /// <summary>The food with that id; null when there is none.</summary>
    public Food? Find(string id) => byId.GetValueOrDefault(id);

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
