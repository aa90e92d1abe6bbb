using Bunit;
using Practice.TestSupport;
using Practice.Web.Features.Today;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class TodayPageTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    [Fact]
    public async Task A_caseload_without_work_says_so_and_offers_what_to_do()
    {
        var page = Open<TodayPage>(desk: await Practice.FoundPractice("Quiet practice"));
        page.WaitForElement(".empty");
        Assert.Contains("Nothing waits for you", page.Markup, StringComparison.Ordinal);
        Assert.Equal("/clients", page.Find(".empty a").GetAttribute("href"));
    }

    [Fact]
    public async Task Work_is_told_by_kind_and_the_next_piece_is_one_key_away()
    {
        var race = await Practice.NewRace(await Practice.NewClient());
        var page = Open<TodayPage>();
        page.WaitForElement(".work");
        Assert.Contains(
            "Plans to build",
            page.Find(".work h2").TextContent,
            StringComparison.Ordinal
        );
        var next = page.Find("a[aria-keyshortcuts=n]");
        Assert.Equal($"/races/{race}", next.GetAttribute("href"));
        Assert.Contains("in 17 days", next.TextContent, StringComparison.Ordinal);
    }
}
