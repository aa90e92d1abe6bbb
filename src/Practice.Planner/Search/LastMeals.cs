namespace Practice.Planner.Search;

/// <summary>The last meals of one plate that were kept, each once.</summary>
internal sealed class LastMeals
{
    private const int Most = 100;

    private readonly HashSet<long> _known = [];
    private readonly Queue<Meal> _meals = new();

    public IEnumerable<Meal> All => _meals;

    public void Add(Meal meal)
    {
        if (!_known.Add(meal.Key))
            return;
        _meals.Enqueue(meal);
        if (_meals.Count > Most)
            _known.Remove(_meals.Dequeue().Key);
    }
}
