using System.Text;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Service.Desks;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class BrandTests(TestPractice practice) : IClassFixture<TestPractice>
{
    // a PNG of one pixel
    private static readonly byte[] Pixel = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
    );

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Owner => practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task The_owner_sets_the_face_and_everybody_sees_it()
    {
        var onFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!;
        var logo = Assert.IsType<LogoRead>(LogoPress.Read(Pixel)).Png;
        var details = BrandDetails.Of(onFile.Value) with
        {
            Name = "  Heron Lane Nutrition ",
            Accent = "#7a3e9d",
            Footer = "1 Heron Lane",
        };
        var outcome = await practice.Get<SetBrand>().Run(Owner, onFile, details, logo, Cancel);
        Assert.IsType<Saved<PracticeProfile>>(outcome);
        var seen = await practice.Get<OpenPractice>().Run(practice.Assistant, Cancel);
        Assert.Equal(("Heron Lane Nutrition", "#7A3E9D"), (seen.Name, seen.Accent));
        Assert.Equal(logo.AsEnumerable(), seen.LogoPng);

        var late = await practice.Get<SetBrand>().Run(Owner, onFile, details, [], Cancel);
        Assert.IsType<Conflict<PracticeProfile>>(late);
    }

    [Theory]
    [InlineData(StaffRole.Assistant)]
    [InlineData(StaffRole.Practitioner)]
    public async Task Nobody_but_the_owner_may(StaffRole role)
    {
        var desk = practice.Practitioner with { Role = role };
        var onFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!;
        await Assert.ThrowsAsync<NotAllowedException>(() =>
            practice.Get<SetBrand>().Open(desk, Cancel)
        );
        await Assert.ThrowsAsync<NotAllowedException>(() =>
            practice.Get<SetBrand>().Run(desk, onFile, BrandDetails.Of(onFile.Value), [], Cancel)
        );
    }

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>", "SVG")]
    [InlineData("<?xml version='1.0'?><!-- --><svg/>", "SVG")]
    [InlineData("GIF89a", "no picture")]
    [InlineData("MZ", "no picture")]
    [InlineData("", "no picture")]
    public void What_is_no_picture_by_its_content_is_refused_and_told(string file, string why) =>
        Assert.Contains(
            why,
            Assert.IsType<LogoRefused>(LogoPress.Read(Encoding.ASCII.GetBytes(file))).Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_damaged_or_huge_file_is_refused()
    {
        Assert.IsType<LogoRefused>(LogoPress.Read(Pixel.AsSpan(0, 20)));
        Assert.IsType<LogoRefused>(LogoPress.Read(new byte[LogoPress.LargestFile + 1]));
    }

    [Fact]
    public void What_hides_behind_the_picture_is_not_kept()
    {
        byte[] withMore = [.. Pixel, .. "<script>hidden</script>"u8];
        var png = Assert.IsType<LogoRead>(LogoPress.Read(withMore)).Png;
        Assert.DoesNotContain(
            "script",
            Encoding.Latin1.GetString(png.AsSpan()),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_preview_says_what_the_paper_will_say()
    {
        var onFile = (await practice.Get<SetBrand>().Open(Owner, Cancel))!;
        var face = onFile.Value with
        {
            Name = "Heron Lane",
            Footer = "1 Heron Lane",
            Accent = "#FFD400",
        };
        var page = practice.Get<PreviewPaper>().Run(Owner, face);
        Assert.Contains(
            page.Foot,
            line => line.Contains("Heron Lane · 1 Heron Lane", StringComparison.Ordinal)
        );
        Assert.True(
            Colour.Parse(page.OnAccent).ContrastWith(Colour.Parse(page.Accent)) >= Colour.Readable
        );
    }
}
