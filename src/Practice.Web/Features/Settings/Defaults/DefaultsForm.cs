using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Practices;

namespace Practice.Web.Features.Settings.Defaults;

/// <summary>What is typed about the practice's usual choices.</summary>
public sealed class DefaultsForm : IDefaultsForm<DefaultsForm>, IValidatableObject
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

    /// <summary>The day's sittings, in order.</summary>
    public IReadOnlyList<SittingForm> Sittings { get; private set; } = [];

    [Required(ErrorMessage = "This is needed.")]
    [Range(0, SymptomThresholds.Severe - 1, ErrorMessage = "Between 0 and 4.")]
    public int? PassUpTo { get; set; }

    [Required(ErrorMessage = "This is needed.")]
    [Range(
        1,
        SymptomThresholds.Severe,
        ErrorMessage = "Between 1 and 5: a severe score always fails."
    )]
    public int? FailFrom { get; set; }

    [Range(1, 30, ErrorMessage = "Between 1 and 30 years.")]
    public int? KeptYears { get; set; }

    /// <summary>What is wrong with the spread as a whole; null when nothing is, or a sitting is to be mended first.</summary>
    public string? SpreadProblem =>
        Sittings.All(s => s.Problem is null) ? DaySpread.Problem(Spread) : null;

    /// <summary>What the shares make together.</summary>
    public int PercentTogether => Sittings.Sum(s => s.Percent ?? 0);

    public static DefaultsForm Open(PracticeDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(defaults);
        return new()
        {
            CarbohydrateGPerKg = defaults.CarbohydrateGPerKg,
            WindowHours = defaults.WindowHours,
            OccasionsPerDay = defaults.OccasionsPerDay,
            DrinksPercent = (int)(defaults.DrinksShare * 100),
            Sittings = Rows(
                defaults.OccasionsPerDay,
                defaults.Sittings.IsEmpty
                    ? DayShape.Of(defaults.OccasionsPerDay)
                    : defaults.Sittings
            ),
            PassUpTo = defaults.Thresholds.PassUpTo,
            FailFrom = defaults.Thresholds.FailFrom,
            KeptYears = defaults.KeptYears,
        };
    }

    public PracticeDefaults ApplyTo(PracticeDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(defaults);
        return defaults with
        {
            CarbohydrateGPerKg = CarbohydrateGPerKg,
            WindowHours = WindowHours!.Value,
            OccasionsPerDay = OccasionsPerDay!.Value,
            DrinksShare = DrinksPercent!.Value / 100m,
            Sittings = Spread,
            Thresholds = new SymptomThresholds(PassUpTo!.Value, FailFrom!.Value),
            KeptYears = KeptYears,
        };
    }

    /// <summary>The house's spread of as many sittings as are wanted.</summary>
    public void SpreadAsUsual()
    {
        if (OccasionsPerDay is >= 5 and <= 7 and var count)
            Sittings = Rows(count, DayShape.Of(count));
    }

    /// <summary>The house's lines.</summary>
    public void JudgeAsUsual() =>
        (PassUpTo, FailFrom) = (SymptomThresholds.House.PassUpTo, SymptomThresholds.House.FailFrom);

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (PassUpTo >= FailFrom)
            yield return new("Below the score that fails.", [nameof(PassUpTo)]);
        if (Sittings.Any(s => s.Problem is not null))
            yield return new("Mend the occasions marked above.", [nameof(Sittings)]);
        else if (SpreadProblem is { } problem)
            yield return new(problem, [nameof(Sittings)]);
    }

    private ImmutableArray<Sitting> Spread => [.. Sittings.Select(s => s.Read())];

    private static List<SittingForm> Rows(int occasions, ImmutableArray<Sitting> sittings) =>
        [.. sittings.Zip(DayShape.Of(occasions), SittingForm.Of)];
}

/// <summary>One sitting of the day as it is typed.</summary>
public sealed class SittingForm
{
    /// <summary>The sitting as the house has it.</summary>
    public required Sitting Usual { get; init; }

    /// <summary>Share of the day's carbohydrate, %.</summary>
    public int? Percent { get; set; }

    /// <summary>When.</summary>
    public TimeOnly? Time { get; set; }

    /// <summary>What is wrong with it; null when nothing is.</summary>
    public string? Problem =>
        Percent is null ? "A share is needed."
        : Time is null ? "A time is needed."
        : DaySpread.ShareProblem(Read()) ?? DaySpread.TimeProblem(Read(), Usual);

    public static SittingForm Of(Sitting sitting, Sitting usual)
    {
        ArgumentNullException.ThrowIfNull(sitting);
        return new()
        {
            Usual = usual,
            Percent = (int)(sitting.Share * 100),
            Time = sitting.Time.ToTimeOnly(),
        };
    }

    public Sitting Read() =>
        new(Usual.Kind, Percent!.Value / 100m, LocalTime.FromTimeOnly(Time!.Value));
}
