using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;
using Practice.Domain.Races;

namespace Practice.Domain.Plans.Weeks;

/// <summary>What the glycogen curve needs to know of the runner, as it stood when the week was laid out.</summary>
/// <param name="Sex">Sex for formulas.</param>
/// <param name="Vo2Max">Maximal oxygen uptake, mL/kg/min.</param>
/// <param name="Discipline">Kind of event.</param>
public sealed record RunnerFacts(Sex Sex, double Vo2Max, Discipline Discipline);

/// <summary>Something to pack.</summary>
/// <param name="Section">Where it belongs: <c>Race kit</c>, <c>Food and drink</c>.</param>
/// <param name="What">What.</param>
/// <param name="IsOwn">Whether the practitioner added it.</param>
public sealed record PackItem(string Section, string What, bool IsOwn = false);

/// <summary>Heat to expect, from the forecast at the time.</summary>
/// <param name="AirC">Air temperature, °C.</param>
/// <param name="HumidityPercent">Relative humidity, %.</param>
/// <param name="WetBulbGlobeC">Wet-bulb globe temperature estimated from them, °C, to 3 °C either way.</param>
/// <param name="Colour">Flag.</param>
/// <param name="Actions">What it means for the race.</param>
public sealed record RaceHeat(
    decimal AirC,
    decimal HumidityPercent,
    decimal WetBulbGlobeC,
    HeatColour Colour,
    ImmutableArray<string> Actions
);

/// <summary>
/// The rest of the race week beside its loading days: every day with pointers, race morning, recovery, drinking,
/// caffeine, sleep, packing, what not to try. Part of the plan model. Meals of the race day are days of sittings like
/// any other, so that the same planner fills them and the same hand edits them.
/// </summary>
public sealed record RaceWeek
{
    /// <summary>Version of this shape in stored documents.</summary>
    public int Shape { get; init; } = 1;

    /// <summary>Time zone the client lives in, where it is not the race's; null otherwise.</summary>
    public string? ClientZoneId { get; init; }

    /// <summary>What the glycogen curve needs.</summary>
    public RunnerFacts? Runner { get; init; }

    /// <summary>The days, seven before to one after.</summary>
    public required ImmutableArray<WeekDay> Days { get; init; }

    /// <summary>The meals before the start.</summary>
    public required PlanDay Morning { get; init; }

    /// <summary>What else matters on race morning.</summary>
    public ImmutableArray<Advice> MorningAdvice { get; init; } = [];

    /// <summary>The practitioner's own words for race morning.</summary>
    public string MorningNote { get; init; } = "";

    /// <summary>The meals of the first four hours after the finish.</summary>
    public required PlanDay Recovery { get; init; }

    /// <summary>What else matters after the finish.</summary>
    public ImmutableArray<Advice> RecoveryAdvice { get; init; } = [];

    /// <summary>The practitioner's own words for after the race.</summary>
    public string RecoveryNote { get; init; } = "";

    /// <summary>Drinking and salting through the week.</summary>
    public ImmutableArray<Advice> Fluids { get; init; } = [];

    /// <summary>Caffeine through the week.</summary>
    public ImmutableArray<Advice> Caffeine { get; init; } = [];

    /// <summary>Sleep.</summary>
    public ImmutableArray<Advice> Sleep { get; init; } = [];

    /// <summary>What not to try this week.</summary>
    public ImmutableArray<string> DoNotTry { get; init; } = [];

    /// <summary>What to pack.</summary>
    public ImmutableArray<PackItem> Packing { get; init; } = [];

    /// <summary>Heat to expect; null while the weather is not known.</summary>
    public RaceHeat? Heat { get; init; }

    /// <summary>A day of the week.</summary>
    /// <exception cref="InvalidOperationException">The week has no such day.</exception>
    public WeekDay this[LocalDate date] => Days.Single(d => d.Date == date);
}
