using System.Globalization;
using System.Text;
using Practice.Domain.Plans;

namespace Practice.Benchmarks;

/// <summary>A menu as plain text, for reading it as one who has to eat it.</summary>
internal static class MenuText
{
    public static string Of(MenuResult result) =>
        string.Concat(result.Days.Select(Of))
        + string.Concat(result.Shortfalls.Select(s => $"  ! {s.Text}{Environment.NewLine}"));

    public static string Of(PlanDay day)
    {
        var text = new StringBuilder();
        {
            var totals = day.Totals;
            Line(
                $"{day.Date.DayOfWeek} (share {day.Share:0.00}): {totals.CarbohydrateG:0} g carbohydrate (aim {day.Limits.CarbohydrateAimG:0}), fibre {totals.FibreG:0.0}/{day.Limits.FibreMaxG:0.0}, fat {totals.FatG:0}/{day.Limits.FatMaxG:0}, protein {totals.ProteinG:0} ({day.Limits.ProteinMinG:0}-{day.Limits.ProteinMaxG:0}), sodium {totals.SodiumMg:0}, drunk {100 * day.DrinksShare:0} %, {day.Occasions.Sum(o => o.Portions.Sum(p => p.Grams)):0} g"
            );
            foreach (var occasion in day.Occasions)
                Line(
                    $"  {occasion.Kind, -19} {occasion.Totals.CarbohydrateG, 4:0}/{occasion.CarbohydrateAimG, -4:0} [{occasion.Pattern}] {string.Join("; ", occasion.Portions.Select(Portion))}"
                );
        }
        return text.ToString();

        void Line(FormattableString line) =>
            text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
    }

    private static string Portion(Portion portion)
    {
        var units = portion.Steps * portion.Serving.UnitsPerStep;
        var unit = units == 1 ? portion.Serving.Unit : portion.Serving.UnitPlural;
        return string.Create(CultureInfo.InvariantCulture, $"{units:0.##} {unit} {portion.Name}");
    }
}
