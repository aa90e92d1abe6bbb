using Google.OrTools.Sat;
using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>
/// The constraint model in which some plates are free and the rest of the menu stands as it is. Rows that nothing free
/// can break are left out; what the fixed part brings to the others is moved into their bounds.
/// </summary>
internal sealed class PartialModel
{
    private readonly MenuModel _menu;
    private readonly IReadOnlyList<long>? _costs;
    private readonly long[] _values;
    private readonly bool[] _isFree;
    private readonly bool _leavesOutLastResorts;
    private readonly int[] _place;
    private readonly List<int> _free = [];

    /// <summary>Part of a menu, by the rows and costs of its model.</summary>
    /// <param name="menu">The whole question.</param>
    /// <param name="values">The menu as it stands; also the hint.</param>
    /// <param name="freePlates">The plates that may change.</param>
    /// <param name="leavesOutLastResorts">
    /// Whether foods so dear that they are on a plate already or never will be stay as they are: half as many choices.
    /// </param>
    public PartialModel(
        MenuModel menu,
        long[] values,
        IReadOnlyCollection<int> freePlates,
        bool leavesOutLastResorts
    )
        : this(menu, values, freePlates, menu.Rows, menu.Costs, leavesOutLastResorts) { }

    /// <summary>All of a menu, judged by other rows and nothing else.</summary>
    public PartialModel(MenuModel menu, long[] values, IEnumerable<Row> rows)
        : this(menu, values, [.. menu.Plates.Select(p => p.Index)], rows, null, false) { }

    /// <summary>Some plates of a menu, judged by other rows and other costs.</summary>
    public PartialModel(
        MenuModel menu,
        long[] values,
        IReadOnlyCollection<int> freePlates,
        IEnumerable<Row> rows,
        IReadOnlyList<long>? costs,
        bool leavesOutLastResorts
    )
    {
        (_menu, _values, _costs) = (menu, values, costs);
        _leavesOutLastResorts = leavesOutLastResorts;
        _isFree = new bool[menu.Plates.Count];
        foreach (var plate in freePlates)
            _isFree[plate] = true;
        _place = new int[menu.Variables.Count];
        Proto.Objective = new CpObjectiveProto();
        Proto.SolutionHint = new PartialVariableAssignment();
        AddVariables();
        foreach (var row in rows)
            if (row.Plate >= 0 ? _isFree[row.Plate] : Array.Exists(row.Variables, IsFree))
                AddRow(row);
    }

    public CpModel Model { get; } = new();

    private CpModelProto Proto => Model.Model;

    /// <summary>Nothing dearer than this is looked for.</summary>
    public void AtMost(long cost)
    {
        Proto.Objective.Domain.Add(long.MinValue);
        Proto.Objective.Domain.Add(cost);
    }

    /// <summary>The menu with the free plates as a solution has them.</summary>
    public long[] Merge(IReadOnlyList<long> solution)
    {
        var values = (long[])_values.Clone();
        for (var i = 0; i < _free.Count; i++)
            values[_free[i]] = solution[i];
        return values;
    }

    /// <summary>Rows that hold if a new literal does; the literal is assumed to hold.</summary>
    /// <returns>The literal, as it is named in the core of an impossible model.</returns>
    public int Assume(IEnumerable<Row> rows)
    {
        var literal = Proto.Variables.Count;
        var variable = new IntegerVariableProto();
        AddDomain(variable, [0, 1]);
        Proto.Variables.Add(variable);
        Proto.Assumptions.Add(literal);
        foreach (var row in rows)
        {
            var first = Proto.Constraints.Count;
            AddRow(row.AsHard());
            for (var c = first; c < Proto.Constraints.Count; c++)
                Proto.Constraints[c].EnforcementLiteral.Add(literal);
        }
        return literal;
    }

    private bool IsFree(int variable) =>
        _isFree[_menu.Variables[variable].Plate]
        && !(_leavesOutLastResorts && _values[variable] == 0 && _menu.IsLastResort(variable));

    private void AddVariables()
    {
        for (var v = 0; v < _place.Length; v++)
        {
            if (!IsFree(v))
                continue;
            _place[v] = _free.Count;
            _free.Add(v);
            var variable = new IntegerVariableProto();
            AddDomain(variable, _menu.Variables[v].Values);
            Proto.Variables.Add(variable);
            Charge(_place[v], _costs?[v] ?? 0);
            Hint(_place[v], _values[v]);
        }
    }

    private void AddRow(Row row)
    {
        long fixedSum = 0,
            least = 0,
            most = 0;
        var linear = new LinearConstraintProto();
        for (var i = 0; i < row.Variables.Length; i++)
        {
            var (v, coefficient) = (row.Variables[i], row.Coefficients[i]);
            if (!IsFree(v))
            {
                fixedSum += coefficient * _values[v];
                continue;
            }
            linear.Vars.Add(_place[v]);
            linear.Coeffs.Add(coefficient);
            var (low, high) = (_menu.Variables[v].Lowest, _menu.Variables[v].Highest);
            least += coefficient * (coefficient > 0 ? low : high);
            most += coefficient * (coefficient > 0 ? high : low);
        }
        var (under, over) = (Less(row.Low, fixedSum), Less(row.High, fixedSum));
        var canFallShort = least < under;
        var canExceed = most > over;
        if (!canFallShort && !canExceed)
            return;
        if (row.IsHard)
        {
            Bound(linear, canFallShort ? under : long.MinValue, canExceed ? over : long.MaxValue);
            return;
        }

        var slack = Proto.Variables.Count;
        var worst = Math.Max(canFallShort ? under - least : 0, canExceed ? most - over : 0);
        var steps = new IntegerVariableProto();
        steps.Domain.Add(0);
        steps.Domain.Add((worst + row.Step - 1) / row.Step);
        Proto.Variables.Add(steps);
        Charge(slack, row.Price!.Value);
        Hint(slack, row.Excess(row.SumOf(_values)));
        if (canExceed && canFallShort)
            Bound(With(linear.Clone(), slack, row.Step), under, long.MaxValue);
        else if (canFallShort)
            Bound(With(linear, slack, row.Step), under, long.MaxValue);
        if (canExceed)
            Bound(With(linear, slack, -row.Step), long.MinValue, over);
    }

    private static long Less(long bound, long fixedSum) =>
        Math.Abs(bound) == Row.Unbounded ? bound : bound - fixedSum;

    private static LinearConstraintProto With(LinearConstraintProto linear, int slack, long times)
    {
        linear.Vars.Add(slack);
        linear.Coeffs.Add(times);
        return linear;
    }

    private void Bound(LinearConstraintProto linear, long low, long high)
    {
        linear.Domain.Add(low);
        linear.Domain.Add(high);
        Proto.Constraints.Add(new ConstraintProto { Linear = linear });
    }

    private void Charge(int place, long cost)
    {
        if (cost == 0)
            return;
        Proto.Objective.Vars.Add(place);
        Proto.Objective.Coeffs.Add(cost);
    }

    // the menu as it stands is a solution: told whole, slack included, the solver starts from it
    private void Hint(int place, long value)
    {
        Proto.SolutionHint.Vars.Add(place);
        Proto.SolutionHint.Values.Add(value);
    }

    // neighbouring values are merged into intervals: the solver refuses a domain that is not in its canonical form
    private static void AddDomain(IntegerVariableProto variable, long[] values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            if (i == 0 || values[i] != values[i - 1] + 1)
                variable.Domain.Add(values[i]);
            if (i == values.Length - 1 || values[i + 1] != values[i] + 1)
                variable.Domain.Add(values[i]);
        }
    }
}
