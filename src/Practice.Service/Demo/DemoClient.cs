using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Service.Demo;

/// <summary>How far a demo client's plan is.</summary>
internal enum DemoPlan
{
    None,
    Draft,
    Issued,
}

/// <summary>An invented race, so many weekends from today.</summary>
internal sealed record DemoRace(
    string Name,
    string Place,
    string ZoneId,
    decimal DistanceKm,
    int Weekend,
    LocalTime Start,
    bool OnSaturday = false
);

/// <summary>An invented client.</summary>
internal sealed record DemoClient(
    string GivenName,
    string FamilyName,
    Sex Sex,
    int Age,
    decimal HeightCm,
    decimal MassKg,
    DemoRace Race,
    Duration? Goal = null
)
{
    /// <summary>Time zone the client lives in: that of the town of the demo practice, wherever the program runs.</summary>
    public string Home { get; init; } = "Europe/London";
    public decimal? BodyFatPercent { get; init; }
    public decimal? Vo2Max { get; init; }
    public RaceResult? RecentResult { get; init; }
    public decimal? WeeklyKm { get; init; }
    public Diet Diet { get; init; } = Diet.Unrestricted;
    public Tastes Tastes { get; init; } = Tastes.Unknown;
    public HouseholdUnits Units { get; init; }
    public string Notes { get; init; } = "";
    public ScreeningAnswers? Answers { get; init; } = Questionnaire.NothingToReport;
    public Clearance? Clearance { get; init; }
    public LoadingChoices Choices { get; init; } = new();
    public DemoPlan Plan { get; init; }
    public ImmutableArray<DemoRehearsal> Rehearsals { get; init; } = [];
    public ImmutableArray<DemoSweat> SweatTests { get; init; } = [];
    public ExpectedWeather? Forecast { get; init; }

    /// <summary>The race before this one; null where none was talked about.</summary>
    public DemoPast? Past { get; init; }
}
