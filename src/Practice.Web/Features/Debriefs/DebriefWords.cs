using Practice.Domain.Debriefs;
using Practice.Web.Parts;

namespace Practice.Web.Features.Debriefs;

/// <summary>A debrief in the practitioner's words.</summary>
internal static class DebriefWords
{
    public static string Of(RaceEnd end) =>
        end switch
        {
            RaceEnd.Stopped => "Did not finish",
            RaceEnd.NotStarted => "Did not start",
            _ => "Finished",
        };

    public static string Of(TakenShare share) =>
        share switch
        {
            TakenShare.Most => "Most of it",
            TakenShare.Half => "About half",
            TakenShare.Little => "Little or nothing",
            _ => "As planned",
        };

    public static string Of(WallFelt wall) =>
        wall switch
        {
            WallFelt.Slowed => "Slowed late on",
            WallFelt.Wall => "Hit the wall",
            _ => "No",
        };

    /// <summary>3 h 41 min, hit the wall at 34 km, gut 4 of 10</summary>
    public static string InShort(DebriefReport report)
    {
        var result = report.FinishTime is { } time ? Say.Span(time) : Of(report.End);
        var wall = report.Wall switch
        {
            WallFelt.Wall => ", hit the wall",
            WallFelt.Slowed => ", slowed late on",
            _ => "",
        };
        var at = report.WallKm is { } km ? $" at {Say.Distance(km)}" : "";
        var gut = report.WorstGut is { } score ? $", worst gut symptom {score} of 10" : "";
        return $"{result}{wall}{at}{gut}";
    }
}
