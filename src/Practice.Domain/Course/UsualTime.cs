using NodaTime;
using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>A time to begin with where there is neither goal nor prediction: a usual speed of the discipline. Own rule.</summary>
internal static class UsualTime
{
    public static Duration Of(Race race) =>
        Duration.FromHours((double)(race.DistanceKm / KmPerHour(race.Discipline)));

    private static decimal KmPerHour(Discipline discipline) =>
        discipline switch
        {
            Discipline.RoadRunning => 10,
            Discipline.TrailRunning => 7,
            Discipline.Cycling => 28,
            Discipline.Triathlon => 15,
            _ => 5,
        };
}
