using System.Collections.Concurrent;
using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;

namespace Practice.Domain.Tests.Handouts;

/// <summary>Papers of each kind, rendered once.</summary>
internal static class SamplePapers
{
    private static readonly SamplePlan Plan = new();
    private static readonly ConcurrentDictionary<string, byte[]> Rendered = new();

    public static IReadOnlyDictionary<string, SamplePlan> All { get; } =
        new Dictionary<string, SamplePlan>
        {
            ["full"] = Plan,
            ["american"] = Plan with
            {
                Units = HouseholdUnits.UsCustomary,
                Options = Plan.Options with { Paper = PaperSize.Letter, Language = "en-US" },
            },
            ["number-free"] = Plan with { NumberFree = true },
            ["large-print"] = Plan with
            {
                Options = Plan.Options with { Variant = HandoutVariant.LargePrint },
            },
            ["long"] = Plan with
            {
                WindowHours = 84,
                Client = "Maximiliane-Theodora Papadopoulou-Ferreira de Vasconcelos",
                Race = "The Very Long Northern Lights Coastal Path and Harbour Bridges Marathon",
                Practice = Plan.Practice with { Accent = "#FFD400" },
            },
            ["draft"] = Plan with
            {
                Client = "Ελένη Παπαδάκη",
                Race = "Кубок Белых Ночей",
                Note = "",
                Practice = Plan.Practice with { Accent = "#7A3E9D", LogoPng = [] },
                Options = Plan.Options with { IssuedOn = null, Paper = PaperSize.Letter },
            },
        };

    public static HandoutDoc Doc(string paper) => Doc(All[paper]);

    public static HandoutDoc Doc(SamplePlan sample) =>
        LoadingHandout.Build(sample.Plan(), sample.Practice, sample.Options);

    public static byte[] Pdf(string paper) =>
        Rendered.GetOrAdd(paper, p => HandoutPdf.Render(Doc(p)));
}
