using System.ComponentModel.DataAnnotations;
using NodaTime;
using Practice.Domain.Races;
using Practice.Web.Features.Clients.Details;
using Practice.Web.Parts;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Features.Races;

/// <summary>What was typed about a race.</summary>
public sealed class RaceForm : IValidatableObject
{
    private const string Missing = "This is needed.";

    [Required(ErrorMessage = Missing), Typed(200)]
    public string? Name { get; set; }

    [Typed(200)]
    public string? Place { get; set; }

    public Discipline Discipline { get; set; }

    [Required(ErrorMessage = Missing)]
    [Range(1, 500, ErrorMessage = "Between 1 and 500 km.")]
    public decimal? DistanceKm { get; set; }

    [Required(ErrorMessage = Missing)]
    public DateOnly? Day { get; set; }

    [Required(ErrorMessage = Missing)]
    public TimeOnly? StartTime { get; set; }

    [Required(ErrorMessage = Missing), Zone]
    public string? ZoneId { get; set; }

    [RaceTime]
    public string? GoalTime { get; set; }

    [Range(-20, 50, ErrorMessage = "Between -20 and 50 °C.")]
    public decimal? TemperatureC { get; set; }

    [Range(0, 100, ErrorMessage = "Between 0 and 100 %.")]
    public decimal? HumidityPercent { get; set; }

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Day is { Year: < 1900 or > 2200 })
            yield return new ValidationResult("A day from 1900 to 2200.", [nameof(Day)]);
        if (TemperatureC is null != HumidityPercent is null)
            yield return new ValidationResult(
                "Weather needs temperature and humidity.",
                [nameof(HumidityPercent)]
            );
    }

    /// <summary>A form filled with a race on file.</summary>
    public static RaceForm Of(Race race) =>
        new()
        {
            Name = race.Name,
            Place = race.Place,
            Discipline = race.Discipline,
            DistanceKm = race.DistanceKm,
            Day = race.Day.ToDateOnly(),
            StartTime = race.Start.TimeOfDay.ToTimeOnly(),
            ZoneId = race.ZoneId,
            GoalTime = race.GoalTime is { } goal ? RaceTimeAttribute.Write(goal) : null,
            TemperatureC = race.Weather?.AirTemperatureC,
            HumidityPercent = race.Weather?.RelativeHumidityPercent,
        };

    /// <summary>What the form says. Only of a form that was found valid.</summary>
    public RaceDetails Read() =>
        new()
        {
            Name = Name!,
            Place = Place ?? "",
            Discipline = Discipline,
            DistanceKm = DistanceKm!.Value,
            Start = LocalDate.FromDateOnly(Day!.Value) + LocalTime.FromTimeOnly(StartTime!.Value),
            ZoneId = ZoneId!,
            GoalTime = RaceTimeAttribute.Read(GoalTime),
            Weather = TemperatureC is { } temperature
                ? new ExpectedWeather(temperature, HumidityPercent!.Value)
                : null,
        };

    /// <summary>The form as lines, to lay two versions side by side.</summary>
    public IReadOnlyList<FactLine> Lines =>
        [
            new("Name", Name ?? ""),
            new("Place", Place ?? ""),
            new("Discipline", Say.Words(Discipline)),
            new("Distance", DistanceKm is { } km ? Say.Distance(km) : ""),
            new(
                "Start",
                Day is { } day && StartTime is { } time
                    ? Say.Moment(LocalDate.FromDateOnly(day) + LocalTime.FromTimeOnly(time))
                    : ""
            ),
            new("Time zone", ZoneId ?? ""),
            new("Goal time", GoalTime ?? ""),
            new("Weather", TemperatureC is { } c ? $"{Say.Number(c)} °C, {HumidityPercent} %" : ""),
        ];
}
