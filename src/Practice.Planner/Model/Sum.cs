namespace Practice.Planner.Model;

/// <summary>A weighted sum of variables under construction; a variable named twice has its weights added.</summary>
internal sealed class Sum
{
    private readonly List<(int Variable, long Coefficient)> _terms = [];

    public bool IsEmpty => _terms.Count == 0;
    public IEnumerable<int> Variables => _terms.Select(t => t.Variable);

    public Sum Plus(int variable, long coefficient = 1)
    {
        if (coefficient != 0)
            _terms.Add((variable, coefficient));
        return this;
    }

    public Sum Plus(Sum other, long times = 1)
    {
        foreach (var (variable, coefficient) in other._terms)
            Plus(variable, coefficient * times);
        return this;
    }

    /// <summary>The terms by variable, each variable once.</summary>
    public (int[] Variables, long[] Coefficients) ToArrays()
    {
        _terms.Sort((one, other) => one.Variable.CompareTo(other.Variable));
        var variables = new List<int>(_terms.Count);
        var coefficients = new List<long>(_terms.Count);
        foreach (var (variable, coefficient) in _terms)
            if (variables.Count > 0 && variables[^1] == variable)
                coefficients[^1] += coefficient;
            else
            {
                variables.Add(variable);
                coefficients.Add(coefficient);
            }
        return ([.. variables], [.. coefficients]);
    }

    /// <summary>How often foods that pass are on these plates.</summary>
    public static Sum OfPresence(IEnumerable<Plate> plates, Func<Candidate, bool> which) =>
        Over(plates, which, c => c.Present, _ => 1);

    /// <summary>How often foods that pass are on this plate.</summary>
    public static Sum OfPresence(Plate plate, Func<Candidate, bool> which) =>
        OfPresence([plate], which);

    /// <summary>What these plates bring, given what one step of each food brings.</summary>
    public static Sum OfAmounts(IEnumerable<Plate> plates, Func<Item, long> perStep) =>
        Over(plates, _ => true, c => c.Amount, c => perStep(c.Item));

    /// <summary>What this plate brings, given what one step of each food brings.</summary>
    public static Sum OfAmounts(Plate plate, Func<Item, long> perStep) =>
        OfAmounts([plate], perStep);

    private static Sum Over(
        IEnumerable<Plate> plates,
        Func<Candidate, bool> which,
        Func<Candidate, int> variable,
        Func<Candidate, long> coefficient
    )
    {
        var sum = new Sum();
        foreach (var candidate in plates.SelectMany(s => s.Candidates).Where(which))
            sum.Plus(variable(candidate), coefficient(candidate));
        return sum;
    }
}
