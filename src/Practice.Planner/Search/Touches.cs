using Practice.Planner.Model;

namespace Practice.Planner.Search;

/// <summary>Which rows each variable of a model is in.</summary>
internal static class Touches
{
    /// <returns>For each variable the places of its rows among those given.</returns>
    public static List<(int Row, long Coefficient)>[] Of(MenuModel model, IReadOnlyList<Row> rows)
    {
        var touches = new List<(int, long)>[model.Variables.Count];
        for (var v = 0; v < touches.Length; v++)
            touches[v] = [];
        for (var r = 0; r < rows.Count; r++)
        for (var i = 0; i < rows[r].Variables.Length; i++)
            touches[rows[r].Variables[i]].Add((r, rows[r].Coefficients[i]));
        return touches;
    }
}
