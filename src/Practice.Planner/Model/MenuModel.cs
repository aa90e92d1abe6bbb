using Practice.Domain.Plans;
using Practice.Planner.Model.Limits;
using Practice.Planner.Model.Quality;
using Practice.Planner.Model.Sense;

namespace Practice.Planner.Model;

/// <summary>
/// The whole question in whole numbers: which pattern, which foods, how many steps, at every sitting; the rows that
/// judge it; and what each choice costs by itself.
/// </summary>
internal sealed class MenuModel
{
    private readonly List<Variable> _variables = [];
    private readonly List<Row> _rows = [];
    private readonly List<long> _costs = [];
    private readonly HashSet<int> _lastResorts = [];

    private MenuModel(MenuRequest request, bool keepsPresentFoods, bool leavesRoom)
    {
        Request = request;
        RoomHundredths = leavesRoom ? 5 : 0;
        Tastes = new ClientTastes(request);
        Plates = PlateChoices.For(this, keepsPresentFoods);
        foreach (var plate in Plates.Where(s => s.Patterns.Length > 0))
        {
            MealSense.Add(this, plate);
            PlateLimits.Add(this, plate);
            PlateWishes.Add(this, plate);
        }
        for (var day = 0; day < request.Days.Length; day++)
        {
            DayLimitRows.Add(this, day);
            DayVariety.Add(this, day);
        }
        BetweenDays.Add(this);
    }

    public MenuRequest Request { get; }

    /// <summary>
    /// What is left below a day's ceilings and above its floors, 0.01 g: amounts are rounded per step, and a menu should
    /// not be over on paper for it.
    /// </summary>
    public long RoomHundredths { get; }
    public ClientTastes Tastes { get; }
    public IReadOnlyList<Plate> Plates { get; }
    public IReadOnlyList<Variable> Variables => _variables;
    public IReadOnlyList<Row> Rows => _rows;
    public IReadOnlyList<long> Costs => _costs;

    /// <summary>A model of the request for filling it from scratch around its locked portions.</summary>
    /// <param name="request">The request.</param>
    /// <param name="leavesRoom">Whether limits are kept with room for rounding; not where they are explained.</param>
    public static MenuModel ToFill(MenuRequest request, bool leavesRoom = false) =>
        new(request, keepsPresentFoods: false, leavesRoom);

    /// <summary>
    /// A model in which the request's present menu can be stated, whatever the practitioner put together: what it
    /// breaks of meal sense costs, but is not forbidden.
    /// </summary>
    public static MenuModel ToEdit(MenuRequest request)
    {
        var model = new MenuModel(request, keepsPresentFoods: true, leavesRoom: false);
        var present = PresentMenu.ValuesIn(model);
        for (var i = 0; i < model._rows.Count; i++)
            if (
                model._rows[i] is { IsHard: true, IsLink: false } row
                && row.CostOf(row.SumOf(present)) > 0
            )
                model._rows[i] = Softened(row);
        return model;
    }

    public IEnumerable<Plate> PlatesOf(int day) => Plates.Where(s => s.Day == day);

    public int NewVariable(long[] values, int plate)
    {
        _variables.Add(new Variable(values, plate));
        _costs.Add(0);
        return _variables.Count - 1;
    }

    public void Charge(int variable, long cost) => _costs[variable] += cost;

    /// <summary>Whether a variable belongs to a food that is only served when nothing else will do.</summary>
    public bool IsLastResort(int variable) => _lastResorts.Contains(variable);

    /// <summary>What it costs that a food is on a plate.</summary>
    public void ChargePresence(Candidate candidate, long cost)
    {
        Charge(candidate.Present, cost);
        if (cost < Prices.LastResort)
            return;
        _lastResorts.Add(candidate.Present);
        _lastResorts.Add(candidate.Amount);
    }

    /// <summary>A rule of one sitting that must hold; where it touches a locked portion it costs instead.</summary>
    public void Require(Plate plate, Sum sum, long low, long high, string says, bool isLink = false)
    {
        if (sum.IsEmpty && low <= 0 && high >= 0)
            return;
        var (variables, coefficients) = sum.ToArrays();
        var row = new Row
        {
            Variables = variables,
            Coefficients = coefficients,
            Low = low,
            High = high,
            Plate = plate.Index,
            Says = says,
            IsLink = isLink,
            IsSense = !isLink,
        };
        var touchesLock = variables.Any(v => _variables[v].IsFixed);
        _rows.Add(touchesLock ? Softened(row) : row);
    }

    /// <summary>A limit or a wish: costs its price for each step outside.</summary>
    public void Prefer(
        Sum sum,
        long low,
        long high,
        long price,
        string says,
        Limit? limit = null,
        long step = 1
    )
    {
        if (sum.IsEmpty && low <= 0)
            return;
        var (variables, coefficients) = sum.ToArrays();
        var plates = variables.Select(v => _variables[v].Plate).Distinct().Take(2).ToList();
        _rows.Add(
            new Row
            {
                Variables = variables,
                Coefficients = coefficients,
                Low = low,
                High = high,
                Price = price,
                Step = step,
                Plate = plates.Count == 1 ? plates[0] : -1,
                Limit = limit,
                Says = says,
            }
        );
    }

    public long CostOf(long[] values)
    {
        long cost = 0;
        for (var v = 0; v < values.Length; v++)
            cost += _costs[v] * values[v];
        foreach (var row in _rows)
            cost += row.CostOf(row.SumOf(values));
        return cost;
    }

    private static Row Softened(Row row) =>
        new()
        {
            Variables = row.Variables,
            Coefficients = row.Coefficients,
            Low = row.Low,
            High = row.High,
            Plate = row.Plate,
            Says = row.Says,
            IsSense = true,
            Price = Prices.BrokenSense,
            Step = Math.Max(1, row.Coefficients.Select(Math.Abs).DefaultIfEmpty(1).Max()),
        };
}
