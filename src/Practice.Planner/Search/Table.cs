using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// A menu laid out in places on its plates, with what it costs. Changes can be taken back, the last ones first.
/// </summary>
internal sealed class Table
{
    // locked portions are on no place: they are there, and nobody moves them
    private readonly Helping[][] _places;
    private readonly PatternChoice[] _patterns;
    private readonly Helping[][] _locked;
    private readonly Score _score;
    private readonly Stack<Change> _changes = [];
    private readonly int _variables;

    /// <summary>A whole menu.</summary>
    public Table(MenuModel model, Score score, IEnumerable<Meal> meals)
        : this(model, score, model.Plates.Zip(meals)) { }

    /// <summary>A plate by itself.</summary>
    public Table(MenuModel model, Score score, Plate plate, Meal meal)
        : this(model, score, [(plate, meal)]) { }

    private Table(MenuModel model, Score score, IEnumerable<(Plate Plate, Meal Meal)> meals)
    {
        _variables = model.Variables.Count;
        _score = score;
        _places = [.. model.Plates.Select(p => new Helping[PlacesOf(p)])];
        _patterns = new PatternChoice[model.Plates.Count];
        _locked = new Helping[model.Plates.Count][];
        foreach (var (plate, meal) in meals.Select(m => (m.Plate.Index, m.Meal)))
        {
            _locked[plate] = [.. meal.Helpings.Where(h => h.Candidate.IsLocked)];
            foreach (var locked in _locked[plate])
                Serve(locked, true);
            _patterns[plate] = meal.Pattern;
            _score.Set(meal.Pattern.Chosen, 1);
            Lay(plate, meal);
        }
        Keep();
    }

    public long Cost => _score.Cost;
    public bool MakesSense => _score.MakesSense;

    /// <summary>What is on a place; no steps when it is empty.</summary>
    public Helping this[int plate, int place] => _places[plate][place];

    /// <summary>A point to which changes can be taken back.</summary>
    public int Mark => _changes.Count;

    public PatternChoice PatternOf(int plate) => _patterns[plate];

    public bool Has(Candidate candidate) => _score.ValueOf(candidate.Present) == 1;

    /// <summary>What is on a plate, as a meal without a price.</summary>
    public Meal MealOn(int plate) =>
        new(_patterns[plate], [.. _locked[plate], .. _places[plate].Where(h => h.Steps > 0)], 0);

    public long[] Values()
    {
        var values = new long[_variables];
        for (var v = 0; v < values.Length; v++)
            values[v] = _score.ValueOf(v);
        return values;
    }

    /// <summary>A place with food on it, by chance; -1 when the plate is empty.</summary>
    public int Served(int plate, Random random)
    {
        var served = 0;
        var found = -1;
        for (var place = 0; place < _places[plate].Length; place++)
            if (_places[plate][place].Steps > 0 && random.Next(++served) == 0)
                found = place;
        return found;
    }

    /// <summary>A place with nothing on it; -1 when the plate is full.</summary>
    public int EmptyPlace(int plate) => Array.FindIndex(_places[plate], h => h.Steps == 0);

    /// <summary>The places with food on them, and one without.</summary>
    public IEnumerable<int> PlacesToChange(int plate)
    {
        for (var place = 0; place < _places[plate].Length; place++)
            if (_places[plate][place].Steps > 0)
                yield return place;
        if (EmptyPlace(plate) is >= 0 and var empty)
            yield return empty;
    }

    /// <summary>Puts a helping on a place; an empty one clears it.</summary>
    public void Put(int plate, int place, Helping helping)
    {
        _changes.Push(new Change(plate, place, _places[plate][place], null));
        Replace(plate, place, helping);
    }

    /// <summary>Lays a whole meal.</summary>
    public void Lay(int plate, Meal meal)
    {
        for (var place = 0; place < _places[plate].Length; place++)
            if (_places[plate][place].Steps > 0)
                Put(plate, place, default);
        var next = 0;
        foreach (var helping in meal.Helpings)
            if (!helping.Candidate.IsLocked)
                Put(plate, next++, helping);
        _changes.Push(new Change(plate, 0, default, _patterns[plate]));
        Follow(plate, meal.Pattern);
    }

    /// <summary>What was changed so far stays.</summary>
    public void Keep() => _changes.Clear();

    public void TakeBack(int mark)
    {
        while (_changes.Count > mark)
        {
            var (plate, place, was, pattern) = _changes.Pop();
            if (pattern is null)
                Replace(plate, place, was);
            else
                Follow(plate, pattern);
        }
    }

    // one more than may be served, so that one can come before another goes
    private static int PlacesOf(Plate plate) =>
        Math.Max(Meals.Helpings.MostFoods(plate.Kind), plate.Occasion.Portions.Length) + 1;

    private void Follow(int plate, PatternChoice pattern)
    {
        if (ReferenceEquals(pattern, _patterns[plate]))
            return;
        _score.Set(_patterns[plate].Chosen, 0);
        _score.Set(pattern.Chosen, 1);
        _patterns[plate] = pattern;
    }

    private void Replace(int plate, int place, Helping helping)
    {
        ref var here = ref _places[plate][place];
        if (here.Steps > 0 && ReferenceEquals(here.Candidate, helping.Candidate))
            _score.Set(helping.Candidate.Amount, helping.Steps);
        else
        {
            Serve(here, false);
            Serve(helping, true);
        }
        here = helping;
    }

    private void Serve(Helping helping, bool isServed)
    {
        if (helping.Steps == 0)
            return;
        _score.Set(helping.Candidate.Present, isServed ? 1 : 0);
        _score.Set(helping.Candidate.Amount, isServed ? helping.Steps : 0);
    }

    private readonly record struct Change(
        int Plate,
        int Place,
        Helping Was,
        PatternChoice? Pattern
    );
}
