using System.Globalization;
using System.Text;
using Practice.Domain.Course;
using Practice.Domain.Races;

namespace Practice.Domain.Tests.Course;

public class GpxFileTests
{
    [Theory]
    [InlineData("drawn-route.gpx", "Round the lake")]
    [InlineData("recorded-watch.gpx", "Morning run")]
    public void Files_of_two_kinds_of_writer_are_the_same_course(string file, string name)
    {
        using var stream = File.OpenRead(
            Path.Combine(AppContext.BaseDirectory, "Course", "Gpx", file)
        );
        var profile = Read(stream, 10.5m);
        Assert.Equal(name, profile.Name);
        Assert.Equal(10.5m, profile.DistanceKm);
        Assert.Equal(0, profile.Points[0].Km);
        Assert.Equal(10.5m, profile.Points[^1].Km);
        Assert.True(profile.HasElevation);
        // the hill is 48 m high, with ripples of 6 m: smoothing takes some of them away
        Assert.InRange(profile.AscentM!.Value, 48, 85);
        Assert.InRange(Math.Abs(profile.AscentM.Value - profile.DescentM!.Value), 0, 3);
        Assert.InRange(profile.ElevationAt(5.2m)!.Value, 100, 116);
    }

    [Fact]
    public void A_point_nobody_could_have_reached_is_left_out_and_told()
    {
        using var stream = File.OpenRead(
            Path.Combine(AppContext.BaseDirectory, "Course", "Gpx", "recorded-watch.gpx")
        );
        Assert.Contains(
            Read(stream, 10.5m).Remarks,
            r => r.Contains("left out", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_route_does_where_there_is_no_track()
    {
        var profile = Read(
            Gpx("<rte><name>Plan</name>" + Points("rtept", 300, i => 10 + i / 10.0) + "</rte>"),
            5.9m
        );
        Assert.Equal("Plan", profile.Name);
        Assert.InRange(profile.AscentM!.Value, 28, 31);
    }

    [Fact]
    public void Without_heights_the_course_is_flat_and_says_so()
    {
        var profile = Read(
            Gpx("<trk><trkseg>" + Points("trkpt", 300, _ => null) + "</trkseg></trk>"),
            5.9m
        );
        Assert.False(profile.HasElevation);
        Assert.Null(profile.AscentM);
        Assert.Contains(profile.Remarks, r => r.Contains("no heights", StringComparison.Ordinal));
    }

    [Fact]
    public void A_few_missing_heights_are_drawn_straight()
    {
        var profile = Read(
            Gpx(
                "<trk><trkseg>"
                    + Points("trkpt", 300, i => i % 7 == 0 ? null : 100)
                    + "</trkseg></trk>"
            ),
            5.9m
        );
        Assert.Equal(100, profile.ElevationAt(3));
        Assert.Contains(profile.Remarks, r => r.Contains("missing", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(5.98, 5.98, null)]
    [InlineData(6.0, 6.0, "scaled")]
    [InlineData(8.0, 5.98, "right file")]
    public void A_length_near_the_race_is_scaled_and_another_is_told(
        double race,
        double length,
        string? remark
    )
    {
        var profile = Read(
            Gpx("<trk><trkseg>" + Points("trkpt", 300, _ => 5) + "</trkseg></trk>"),
            (decimal)race
        );
        Assert.Equal(length, (double)profile.DistanceKm, tolerance: 0.05);
        if (remark is null)
            Assert.Empty(profile.Remarks);
        else
            Assert.Contains(profile.Remarks, r => r.Contains(remark, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_hundred_thousand_points_become_a_short_profile()
    {
        // 200 km of points a metre apart, rising and falling
        var body = new StringBuilder("<trk><trkseg>");
        for (var i = 0; i < 200_000; i++)
            body.Append(
                CultureInfo.InvariantCulture,
                $"<trkpt lat=\"{45 + i * 9e-6:0.000000}\" lon=\"7\"><ele>{500 + 300 * Math.Sin(i / 8000.0):0.0}</ele></trkpt>"
            );
        var profile = Read(Gpx(body.Append("</trkseg></trk>").ToString()), 200);
        Assert.InRange(profile.Points.Length, 500, 1100);
        Assert.Equal(200, profile.DistanceKm);
        // eight times up by 600 m or a part of it: 25 radians of a sine
        Assert.InRange(profile.AscentM!.Value, 2300, 2420);
    }

    [Theory]
    [InlineData("", "well-formed")]
    [InlineData("<gpx><trk><trkseg><trkpt lat='1' lon='2'>", "well-formed")]
    [InlineData("<kml></kml>", "begins with <kml>")]
    [InlineData("<gpx></gpx>", "no track or route")]
    [InlineData("<gpx><wpt lat='1' lon='1'/><wpt lat='1' lon='2'/></gpx>", "places but no track")]
    [InlineData("<gpx><trk><trkseg><trkpt lat='91' lon='1'/></trkseg></trk></gpx>", "no latitude")]
    [InlineData("<gpx><trk><trkseg><trkpt lon='1'/></trkseg></trk></gpx>", "has no latitude")]
    [InlineData(
        "<gpx><trk><trkseg><trkpt lat='1' lon='east'/></trkseg></trk></gpx>",
        "'east' is no longitude"
    )]
    [InlineData(
        "<gpx><trk><trkseg><trkpt lat='1' lon='1'/><trkpt lat='1.001' lon='1'/></trkseg></trk></gpx>",
        "shorter than a kilometre"
    )]
    [InlineData("<!DOCTYPE gpx [<!ENTITY a 'b'>]><gpx>&a;</gpx>", "document type")]
    public void What_can_not_be_read_says_why(string text, string why)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        var refused = Assert.IsType<GpxRefused>(GpxFile.Read(stream, 10, Discipline.RoadRunning));
        Assert.Contains(why, refused.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_binary_file_is_refused()
    {
        using var stream = new MemoryStream([
            0x0e,
            0x10,
            0xd9,
            0x07,
            0,
            0,
            1,
            2,
            3,
            0x2e,
            0x46,
            0x49,
            0x54,
        ]);
        Assert.IsType<GpxRefused>(GpxFile.Read(stream, 10, Discipline.RoadRunning));
    }

    private static CourseProfile Read(Stream stream, decimal raceKm)
    {
        using (stream)
            return GpxFile.Read(stream, raceKm, Discipline.RoadRunning) switch
            {
                GpxCourse course => course.Profile,
                GpxRefused refused => throw new InvalidOperationException(refused.Reason),
                _ => throw new InvalidOperationException(),
            };
    }

    private static MemoryStream Gpx(string body) =>
        new(
            Encoding.UTF8.GetBytes(
                $"<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\">{body}</gpx>"
            )
        );

    /// <summary>Points due north, 20 m apart.</summary>
    private static string Points(string element, int count, Func<int, double?> height) =>
        string.Concat(
            Enumerable
                .Range(0, count)
                .Select(i =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"<{element} lat=\"{50 + i * 20 / 111194.93:0.00000000}\" lon=\"8\">{(height(i) is { } m ? string.Create(CultureInfo.InvariantCulture, $"<ele>{m}</ele>") : "")}</{element}>"
                    )
                )
        );
}
