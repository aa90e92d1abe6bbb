using System.ComponentModel.DataAnnotations;
using NodaTime;
using Practice.Domain.Clients;

namespace Practice.Web.Features.Clients;

/// <summary>A sweat test as typed.</summary>
internal sealed class SweatForm
{
    [Required(ErrorMessage = "Choose the day.")]
    public DateOnly? On { get; set; }

    [Required(ErrorMessage = "Type the minutes.")]
    [Range(20, 480, ErrorMessage = "20 to 480 min.")]
    public int? Minutes { get; set; } = 60;

    [Required(ErrorMessage = "Type the weight.")]
    [Range(25.0, 250.0, ErrorMessage = "25 to 250 kg.")]
    public decimal? BeforeKg { get; set; }

    [Required(ErrorMessage = "Type the weight.")]
    [Range(25.0, 250.0, ErrorMessage = "25 to 250 kg.")]
    public decimal? AfterKg { get; set; }

    [Range(0.0, 10.0, ErrorMessage = "0 to 10 L.")]
    public decimal? DrunkL { get; set; }

    [Range(0.0, 3.0, ErrorMessage = "0 to 3 L.")]
    public decimal? UrineL { get; set; }

    [Range(0.1, 200.0, ErrorMessage = "0.1 to 200 km.")]
    public decimal? DistanceKm { get; set; }

    [Range(-20.0, 50.0, ErrorMessage = "-20 to 50 °C.")]
    public decimal? AirC { get; set; }

    [Range(0.0, 100.0, ErrorMessage = "0 to 100 %.")]
    public decimal? HumidityPercent { get; set; }

    /// <summary>The test, once the form is valid.</summary>
    public SweatTest Read() =>
        new()
        {
            On = LocalDate.FromDateOnly(On!.Value),
            Minutes = Minutes!.Value,
            BeforeKg = BeforeKg!.Value,
            AfterKg = AfterKg!.Value,
            DrunkL = DrunkL ?? 0,
            UrineL = UrineL ?? 0,
            DistanceKm = DistanceKm,
            AirC = AirC,
            HumidityPercent = HumidityPercent,
        };
}
