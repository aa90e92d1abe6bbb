using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Course;
using Practice.Domain.Physiology;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Service.Courses;

/// <summary>The course of a race on the desk, with what it must respect.</summary>
/// <param name="Client">Who runs it.</param>
/// <param name="Race">The race.</param>
/// <param name="Course">The course with the state it was read at; null before it is begun.</param>
/// <param name="ExpectedFinish">When the client should finish.</param>
/// <param name="Adjustments">What screening changed.</param>
/// <param name="Gut">What rehearsals tell of the gut.</param>
/// <param name="StandingHolds">Holds that block issuing today.</param>
/// <param name="Draft">The open draft of the race's plan; null when there is none.</param>
/// <param name="Today">The day on which all this holds.</param>
public sealed record CourseFile(
    Client Client,
    Race Race,
    OnFile<RaceCourse>? Course,
    Target ExpectedFinish,
    Adjustments Adjustments,
    GutRecord Gut,
    ImmutableArray<Hold> StandingHolds,
    PlanVersionRow? Draft,
    LocalDate Today
)
{
    /// <summary>The hold that forbids even a draft; null when none stands.</summary>
    public Hold? ForbidsPlanning => StandingHolds.FirstOrDefault(h => h.ForbidsDrafting);

    /// <summary>The case of a sheet in its present state.</summary>
    public CourseCase CaseOf(CourseSheet sheet) =>
        CourseCase.Of(Client, Race, Adjustments, ExpectedFinish, sheet, Gut, Today);

    /// <summary>The plan as a sheet reads now.</summary>
    public CoursePlan Read(CourseSheet sheet) => CourseReading.Of(CaseOf(sheet));

    /// <summary>A sheet to begin with: what client and race already tell is filled in.</summary>
    public CourseSheet NewSheet(CourseProfile profile)
    {
        var heat = Race.Weather is { } weather
            ? WetBulbGlobe.Estimated(
                (double)weather.AirTemperatureC,
                (double)weather.RelativeHumidityPercent
            )
            : (double?)null;
        var sweat = Adjustments.NoWeighing ? null : SweatRate.Of(Client.SweatLog, Race.Day, heat);
        if (sweat is { IsPlausible: false })
            sweat = null;
        var testHeat = sweat is null ? null : SweatRate.HeatOf(sweat.Test);
        return new CourseSheet
        {
            Profile = profile,
            Products = CourseProducts.ToBeginWith,
            Choices = new CourseChoices
            {
                SweatLPerHour = Rounded(sweat?.LPerHour, 2),
                SweatTestHeatC = Rounded((decimal?)testHeat, 1),
                RaceHeatC = Rounded((decimal?)heat, 1),
            },
        };
    }

    private static decimal? Rounded(decimal? value, int decimals) =>
        value is { } number ? Math.Round(number, decimals) : null;
}
