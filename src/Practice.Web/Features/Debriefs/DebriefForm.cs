using System.ComponentModel.DataAnnotations;
using NodaTime;
using Practice.Domain.Debriefs;
using Practice.Domain.Races;
using Practice.Web.Features.Clients.Details;

namespace Practice.Web.Features.Debriefs;

/// <summary>A debrief as typed.</summary>
internal sealed class DebriefForm : IValidatableObject
{
    public RaceEnd End { get; set; }

    [RaceTime]
    public string? FinishTime { get; set; }

    public TakenShare LoadingEaten { get; set; }

    public TakenShare CourseTaken { get; set; }

    [Range(0.0, 150.0, ErrorMessage = "0 to 150 g/h.")]
    public decimal? TakenGPerHour { get; set; }

    [Range(0, 10, ErrorMessage = "0 to 10.")]
    public int? WorstGut { get; set; }

    [StringLength(2000)]
    public string? Symptoms { get; set; }

    public WallFelt Wall { get; set; }

    public decimal? WallKm { get; set; }

    [Range(-20.0, 50.0, ErrorMessage = "-20 to 50 °C.")]
    public decimal? TemperatureC { get; set; }

    [Range(0.0, 100.0, ErrorMessage = "0 to 100 %.")]
    public decimal? HumidityPercent { get; set; }

    [StringLength(4000)]
    public string? NextTime { get; set; }

    /// <summary>Length of the course, km.</summary>
    public decimal DistanceKm { get; init; }

    public static DebriefForm Of(DebriefReport? report, Race race) =>
        new()
        {
            DistanceKm = race.DistanceKm,
            End = report?.End ?? RaceEnd.Finished,
            FinishTime = report?.FinishTime is { } time ? RaceTimeAttribute.Write(time) : null,
            LoadingEaten = report?.LoadingEaten ?? TakenShare.AsPlanned,
            CourseTaken = report?.CourseTaken ?? TakenShare.AsPlanned,
            TakenGPerHour = report?.TakenGPerHour,
            WorstGut = report?.WorstGut,
            Symptoms = report?.Symptoms,
            Wall = report?.Wall ?? WallFelt.No,
            WallKm = report?.WallKm,
            TemperatureC = (report?.Weather ?? race.Weather)?.AirTemperatureC,
            HumidityPercent = (report?.Weather ?? race.Weather)?.RelativeHumidityPercent,
            NextTime = report?.NextTime,
        };

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (End == RaceEnd.Finished && RaceTimeAttribute.Read(FinishTime) is null)
            yield return new("Type the finish time, such as 3:41:00.", [nameof(FinishTime)]);
        if (WallKm is { } km && (km < 0 || km > DistanceKm))
            yield return new("Within the course.", [nameof(WallKm)]);
        if (TemperatureC is null != HumidityPercent is null)
            yield return new("Weather needs temperature and humidity.", [nameof(HumidityPercent)]);
    }

    /// <summary>The report, once the form is valid.</summary>
    public DebriefReport Read() =>
        new()
        {
            End = End,
            FinishTime = End == RaceEnd.Finished ? RaceTimeAttribute.Read(FinishTime) : null,
            LoadingEaten = LoadingEaten,
            CourseTaken = CourseTaken,
            TakenGPerHour = TakenGPerHour,
            WorstGut = WorstGut,
            Symptoms = Symptoms?.Trim() ?? "",
            Wall = Wall,
            WallKm = Wall == WallFelt.No ? null : WallKm,
            Weather =
                TemperatureC is { } air && HumidityPercent is { } humidity
                    ? new ExpectedWeather(air, humidity)
                    : null,
            NextTime = NextTime?.Trim() ?? "",
        };
}
