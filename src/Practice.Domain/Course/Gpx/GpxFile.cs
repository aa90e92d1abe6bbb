using System.Globalization;
using System.Xml;
using Practice.Domain.Races;

namespace Practice.Domain.Course;

/// <summary>
/// Reads the tracks and routes of a GPX file, version 1.0 or 1.1, point by point, so that long files cost no memory
/// beyond their points. Document types and outside references are refused. Tracks go before routes; segments follow one
/// another; waypoints are left out.
/// </summary>
public static class GpxFile
{
    /// <summary>Largest file, bytes.</summary>
    public const long LargestBytes = 40_000_000;

    /// <summary>Most points.</summary>
    public const int MostPoints = 500_000;

    /// <summary>Reads a course.</summary>
    /// <param name="file">The file.</param>
    /// <param name="raceKm">Official distance of the race, km.</param>
    /// <param name="discipline">Kind of event: wheels go faster than legs.</param>
    public static GpxReading Read(Stream file, decimal raceKm, Discipline discipline)
    {
        try
        {
            using var xml = XmlReader.Create(file, Settings);
            return Points(xml) switch
            {
                { Count: < 2, Waypoints: > 1 } => new GpxRefused(
                    "The file holds places but no track or route. Export the track from the program that drew it."
                ),
                { Count: < 2 } => new GpxRefused(
                    "The file holds no track or route with two points or more."
                ),
                var found => GpxProfile.Of(found, raceKm, discipline),
            };
        }
        catch (GpxException refused)
        {
            return new GpxRefused(refused.Message, refused.Line);
        }
        catch (XmlException broken)
        {
            return new GpxRefused(
                broken.Message.Contains("DTD", StringComparison.Ordinal)
                    ? "The file holds a document type, which no course needs: refused for safety."
                    : "The file is no well-formed GPX: it may be cut short, or of another kind (FIT, TCX, KML).",
                broken.LineNumber > 0 ? broken.LineNumber : null
            );
        }
    }

    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersInDocument = LargestBytes,
        MaxCharactersFromEntities = 1024,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
    };

    private static RawTrack Points(XmlReader xml)
    {
        xml.MoveToContent();
        if (xml.LocalName != "gpx")
            throw new GpxException(
                $"This is no GPX file: it begins with <{xml.LocalName}>.",
                LineOf(xml)
            );
        var track = new RawTrack();
        var route = new RawTrack();
        var waypoints = 0;
        var container = "";
        while (xml.Read())
            if (xml.NodeType == XmlNodeType.Element)
            {
                if (xml.Depth == 1)
                    container = xml.LocalName;
                switch (xml.LocalName)
                {
                    case "trkpt":
                        track.Add(Point(xml), LineOf(xml));
                        break;
                    case "rtept":
                        route.Add(Point(xml), LineOf(xml));
                        break;
                    case "wpt":
                        waypoints++;
                        Skip(xml);
                        break;
                    case "name" when xml.Depth == 2 && container == "trk":
                        track.Name = TextOf(xml).Trim();
                        break;
                    case "name" when xml.Depth == 2 && container == "rte":
                        route.Name = TextOf(xml).Trim();
                        break;
                    default:
                        break;
                }
            }
        var found = track.Count >= 2 ? track : route;
        found.Waypoints = waypoints;
        return found;
    }

    private static RawPoint Point(XmlReader xml)
    {
        var line = LineOf(xml);
        var lat = Degrees(xml.GetAttribute("lat"), 90, "latitude", line);
        var lon = Degrees(xml.GetAttribute("lon"), 180, "longitude", line);
        double? height = null;
        DateTimeOffset? time = null;
        if (!xml.IsEmptyElement)
        {
            using var inner = xml.ReadSubtree();
            inner.Read();
            while (inner.Read())
                if (inner.NodeType == XmlNodeType.Element && inner.Depth == 1)
                    if (inner.LocalName == "ele")
                        height = Height(TextOf(inner));
                    else if (inner.LocalName == "time")
                        time = Time(TextOf(inner));
        }
        return new RawPoint(lat, lon, height, time);
    }

    private static string TextOf(XmlReader xml)
    {
        using var inner = xml.ReadSubtree();
        inner.Read();
        return inner.ReadElementContentAsString();
    }

    private static void Skip(XmlReader xml)
    {
        using var inner = xml.ReadSubtree();
        while (inner.Read()) { }
    }

    private static double Degrees(string? text, double most, string name, int? line) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)
        && double.IsFinite(degrees)
        && Math.Abs(degrees) <= most
            ? degrees
            : throw new GpxException(
                text is null
                    ? $"A point has no {name}."
                    : $"'{(text.Length > 20 ? text[..20] : text)}' is no {name}.",
                line
            );

    /// <summary>A height that can stand on earth; anything else counts as unknown.</summary>
    private static double? Height(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var metres)
        && metres is > -500 and < 9000
            ? metres
            : null;

    private static DateTimeOffset? Time(string text) =>
        DateTimeOffset.TryParse(
            text,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal,
            out var time
        )
            ? time
            : null;

    private static int? LineOf(XmlReader xml) =>
        xml is IXmlLineInfo info && info.HasLineInfo() ? info.LineNumber : null;
}

/// <summary>A point as it stands in the file.</summary>
internal readonly record struct RawPoint(
    double Latitude,
    double Longitude,
    double? HeightM,
    DateTimeOffset? Time
);

/// <summary>The points of a file in order.</summary>
internal sealed class RawTrack
{
    private readonly List<RawPoint> _points = [];

    public string Name { get; set; } = "";

    public int Waypoints { get; set; }

    public int Count => _points.Count;

    public IReadOnlyList<RawPoint> Points => _points;

    public void Add(RawPoint point, int? line)
    {
        if (_points.Count == GpxFile.MostPoints)
            throw new GpxException(
                $"The file holds more than {GpxFile.MostPoints} points: thin it out before.",
                line
            );
        _points.Add(point);
    }
}

/// <summary>What is wrong in a file, on its way to the reader's answer.</summary>
internal sealed class GpxException(string message, int? line) : Exception(message)
{
    public int? Line { get; } = line;
}
