using System.Text.Json;
using Microsoft.Playwright;

namespace Practice.E2E.Tests.MainJob;

/// <summary>A food on a plate as the workbench shows it.</summary>
/// <param name="Food">Its name.</param>
/// <param name="Amount">The household measure.</param>
/// <param name="Measured">What the scales say, where the measure is not that already.</param>
/// <param name="Grams">Carbohydrate, g.</param>
/// <param name="IsLocked">Whether rebalancing leaves it.</param>
public sealed record PortionOnScreen(
    string Food,
    string Amount,
    string Measured,
    string Grams,
    bool IsLocked
);

/// <summary>A sitting as the workbench shows it.</summary>
public sealed record OccasionOnScreen(
    string Name,
    string Carbohydrate,
    IReadOnlyList<PortionOnScreen> Portions
);

/// <summary>A day as the workbench shows it.</summary>
public sealed record DayOnScreen(
    string Name,
    string Carbohydrate,
    IReadOnlyList<OccasionOnScreen> Occasions
);

/// <summary>All that stands on the plates of the workbench, read off the screen.</summary>
public sealed record PlanOnScreen(IReadOnlyList<DayOnScreen> Days)
{
    private const string Reading = """
        () => {
            const said = (e) => (e?.textContent ?? "").replaceAll("\u00a0", " ").replace(/\s+/g, " ").trim();
            return JSON.stringify([...document.querySelectorAll("section.day")].map((day) => ({
                Name: day.getAttribute("aria-label"),
                Carbohydrate: said(day.querySelector(".meter-figures strong")),
                Occasions: [...day.querySelectorAll("article")].map((occasion) => ({
                    Name: occasion.getAttribute("aria-label"),
                    Carbohydrate: said(occasion.querySelector(".sum strong")),
                    Portions: [...occasion.querySelectorAll("li.portion")].map((portion) => ({
                        Food: said(portion.querySelector(".name")),
                        Amount: said(portion.querySelector(".amount strong")),
                        Measured: said(portion.querySelector(".amount small")),
                        Grams: said(portion.querySelector(".grams strong")),
                        IsLocked: portion.classList.contains("locked"),
                    })),
                })),
            })));
        }
        """;

    /// <summary>One line for each thing that is said, to compare by.</summary>
    public IEnumerable<string> Lines =>
        from day in Days
        from line in (string[])
            [
                $"{day.Name}: {day.Carbohydrate} g",
                .. from occasion in day.Occasions
                from line in (string[])
                    [
                        $"  {occasion.Name}: {occasion.Carbohydrate} g",
                        .. occasion.Portions.Select(p =>
                            $"    {p.Food}, {p.Amount}, {p.Grams} g{(p.IsLocked ? ", locked" : "")}"
                        ),
                    ]
                select line,
            ]
        select line;

    public PortionOnScreen this[Plate plate] =>
        Days.Single(d => d.Name == plate.Day)
            .Occasions.Single(o => o.Name == plate.Occasion)
            .Portions.Single(p => p.Food == plate.Food);

    public IEnumerable<PortionOnScreen> Portions =>
        Days.SelectMany(day => day.Occasions).SelectMany(occasion => occasion.Portions);

    public static async Task<PlanOnScreen> Read(IPage page)
    {
        ArgumentNullException.ThrowIfNull(page);
        var days = await page.EvaluateAsync<string>(Reading);
        return new(JsonSerializer.Deserialize<IReadOnlyList<DayOnScreen>>(days)!);
    }
}
