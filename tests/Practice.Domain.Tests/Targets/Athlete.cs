using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

/// <summary>A valid athlete with a marathon ahead; tests change one fact.</summary>
internal sealed record Athlete
{
    public static readonly LocalDate Today = new(2026, 9, 1);

    public decimal MassKg { get; init; } = 70;
    public Sex Sex { get; init; } = Sex.Male;
    public decimal HeightCm { get; init; } = 175;
    public int Age { get; init; } = 35;
    public decimal? BodyFatPercent { get; init; }
    public decimal? Vo2Max { get; init; }
    public RaceResult? Recent { get; init; }
    public decimal? WeeklyKm { get; init; }
    public decimal DistanceKm { get; init; } = 42.195m;
    public Discipline Discipline { get; init; }
    public Duration? Goal { get; init; } = Duration.FromMinutes(195);
    public Adjustments Adjustments { get; init; } = Adjustments.None;
    public LoadingChoices Choices { get; init; } = new();

    /// <summary>55 kg, marathon in 4:15.</summary>
    public static Athlete LightWoman { get; } =
        new()
        {
            MassKg = 55,
            Sex = Sex.Female,
            HeightCm = 163,
            Age = 30,
            Goal = Duration.FromMinutes(255),
            Recent = Half(minutes: 118),
            WeeklyKm = 40,
        };

    /// <summary>70 kg, marathon in 3:15.</summary>
    public static Athlete MiddlingMan { get; } =
        new() { Recent = Half(minutes: 90), WeeklyKm = 30 * 1.609344m };

    /// <summary>95 kg, marathon in 5:00, nothing measured.</summary>
    public static Athlete HeavyMan { get; } =
        new()
        {
            MassKg = 95,
            HeightCm = 188,
            Age = 45,
            Goal = Duration.FromMinutes(300),
        };

    public static RaceResult Half(double minutes) =>
        new(21.0975m, Duration.FromMinutes(minutes), new LocalDate(2026, 5, 10));

    public LoadingTargets Targets() =>
        LoadingTargets.For(
            Client(),
            Run(),
            new ScreeningOutcome([], [], Adjustments),
            Choices,
            Today
        );

    public Client Client() =>
        Practice.Domain.Clients.Client.Register(
            Guid.Empty,
            "Ada",
            "Example",
            Today.PlusYears(-Age),
            new Physique
            {
                Sex = Sex,
                HeightCm = HeightCm,
                BodyFatPercent = BodyFatPercent,
                Vo2Max = Vo2Max,
                RecentResult = Recent,
                WeeklyKm = WeeklyKm,
            },
            new BodyMassEntry(Today, BodyMass.OfKilograms(MassKg))
        );

    private Race Run() =>
        Race.Enter(
            Guid.Empty,
            Guid.Empty,
            new RaceDetails
            {
                Name = "Harvest Marathon",
                DistanceKm = DistanceKm,
                Discipline = Discipline,
                Start = new LocalDateTime(2026, 9, 27, 9, 0),
                ZoneId = "Europe/London",
                GoalTime = Goal,
            }
        );
}
