using System.ComponentModel.DataAnnotations;
using Practice.Domain.Practices;
using Practice.Web.Parts;

namespace Practice.Web.Features.Settings.Defaults;

/// <summary>What is typed about the practice's usual choices.</summary>
public sealed class DefaultsForm
{
    [Range(3, 14, ErrorMessage = "Between 3 and 14 g/kg.")]
    public decimal? CarbohydrateGPerKg { get; set; }

    [Required(ErrorMessage = "This is needed.")]
    [Range(24, 96, ErrorMessage = "Between 24 and 96 h.")]
    public int? WindowHours { get; set; }

    [Required(ErrorMessage = "This is needed.")]
    [Range(5, 7, ErrorMessage = "Between 5 and 7.")]
    public int? OccasionsPerDay { get; set; }

    [Required(ErrorMessage = "This is needed.")]
    [Range(0, 50, ErrorMessage = "Between 0 and 50 %.")]
    public int? DrinksPercent { get; set; }

    [Typed(PracticeDefaults.MostNote, OfLines = true)]
    public string? Note { get; set; }

    [Range(1, 30, ErrorMessage = "Between 1 and 30 years.")]
    public int? KeptYears { get; set; }

    public static DefaultsForm Of(PracticeDefaults defaults) =>
        new()
        {
            CarbohydrateGPerKg = defaults.CarbohydrateGPerKg,
            WindowHours = defaults.WindowHours,
            OccasionsPerDay = defaults.OccasionsPerDay,
            DrinksPercent = (int)(defaults.DrinksShare * 100),
            Note = defaults.Note,
            KeptYears = defaults.KeptYears,
        };

    public PracticeDefaults Read() =>
        new()
        {
            CarbohydrateGPerKg = CarbohydrateGPerKg,
            WindowHours = WindowHours!.Value,
            OccasionsPerDay = OccasionsPerDay!.Value,
            DrinksShare = DrinksPercent!.Value / 100m,
            Note = Note ?? "",
            KeptYears = KeptYears,
        };
}
