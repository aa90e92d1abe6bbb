using System.Xml.Linq;

namespace Practice.Web.Tests.Arrows;

/// <summary>The arrows as the project files draw them: compiled code hides a reference that is declared and not used.</summary>
public class ProjectFilesTests
{
    private static readonly string Source = Path.Combine(Root(), "src");

    [Theory]
    [InlineData("Practice.Domain", "")]
    [InlineData("Practice.Planner", "Practice.Domain")]
    [InlineData("Practice.Handouts", "Practice.Domain")]
    [InlineData("Practice.Store", "Practice.Domain")]
    [InlineData(
        "Practice.Service",
        "Practice.Domain Practice.Handouts Practice.Planner Practice.Store"
    )]
    [InlineData("Practice.Web", "Practice.Domain Practice.Service")]
    public void A_project_names_only_what_its_arrows_allow(string project, string allowed) =>
        Assert.Equal(
            allowed,
            string.Join(
                ' ',
                References(project, "ProjectReference")
                    .Select(r => Path.GetFileNameWithoutExtension(r.Replace('\\', '/')))
                    .Order(StringComparer.Ordinal)
            )
        );

    [Fact]
    public void Domain_has_one_package_NodaTime() =>
        Assert.Equal(["NodaTime"], References("Practice.Domain", "PackageReference"));

    [Theory]
    [InlineData("Google.OrTools", "Practice.Planner")]
    [InlineData("PDFsharp", "Practice.Handouts")]
    [InlineData("QRCoder", "Practice.Handouts")]
    [InlineData("Ical.Net", "Practice.Handouts")]
    [InlineData("Npgsql.EntityFrameworkCore.PostgreSQL", "Practice.Store")]
    [InlineData("Microsoft.AspNetCore.Identity.EntityFrameworkCore", "Practice.Store")]
    [InlineData("CsvHelper", "Practice.Service")]
    [InlineData("MudBlazor", "Practice.Web")]
    public void A_library_stays_behind_its_wall(string package, string wall) =>
        Assert.Equal(
            [wall],
            Directory
                .GetDirectories(Source)
                .Select(d => Path.GetFileName(d)!)
                .Where(project => References(project, "PackageReference").Contains(package))
        );

    private static IEnumerable<string> References(string project, string kind) =>
        XDocument
            .Load(Path.Combine(Source, project, project + ".csproj"))
            .Descendants(kind)
            .Select(e => e.Attribute("Include")!.Value);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Practice.sln")))
            folder = folder.Parent;
        return folder?.FullName
            ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
