using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Practice.Domain.Course;
using Practice.Service.Courses;
using Practice.TestSupport;
using Practice.Web.Features.Courses;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class CoursePageTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    [Fact]
    public async Task Her_own_value_for_what_the_gut_takes_moves_the_target_and_is_kept_with_her_reason()
    {
        var (race, page) = await Facts();
        Assert.Contains("none set", Line(page, "Tolerated in rehearsal"), StringComparison.Ordinal);

        await Override(page, CourseTargetKeys.Tolerated, "40", "Her last coach saw it");

        Assert.Contains("40 g/h", Line(page, "Tolerated in rehearsal"), StringComparison.Ordinal);
        Assert.Contains("50 g/h", Line(page, "Carbohydrate"), StringComparison.Ordinal);
        page.WaitForAssertion(() =>
            Assert.Contains("Saved", page.Find(".course-bar").TextContent, StringComparison.Ordinal)
        );
        var own = Assert.Single((await OnFile(race)).Choices.Overrides);
        Assert.Equal(
            (40, "Her last coach saw it", Practice.Practitioner.Name),
            (own.Value, own.Reason, own.By)
        );
    }

    [Fact]
    public async Task A_ceiling_offers_no_own_value()
    {
        var (_, page) = await Facts();
        Assert.Empty(page.FindAll($"#own-{CourseTargetKeys.Glucose}"));
        Assert.Single(page.FindAll($"#own-{CourseTargetKeys.Carbohydrate}"));
    }

    private async Task<(Guid Race, IRenderedComponent<CoursePage> Page)> Facts()
    {
        var race = await Practice.NewRace(await Practice.NewClient());
        var file = await Practice.Get<OpenCourse>().Run(Practice.Practitioner, race, Cancel);
        await Practice
            .Get<BeginCourse>()
            .Run(Practice.Practitioner, file!, CourseProfile.Typed(42.195m), Cancel);
        Services
            .GetRequiredService<NavigationManager>()
            .NavigateTo($"/races/{race}/course?part=facts");
        var page = Open<CoursePage>(p => p.Add(c => c.Id, race));
        page.WaitForElement(".target-line");
        return (race, page);
    }

    private static async Task Override(
        IRenderedComponent<CoursePage> page,
        string key,
        string value,
        string reason
    )
    {
        await page.Find($"#own-{key}").ChangeAsync(new() { Value = value });
        await page.Find($"#why-{key}").ChangeAsync(new() { Value = reason });
        await page.Find($"form:has(#own-{key})").SubmitAsync();
    }

    private async Task<CourseSheet> OnFile(Guid race) =>
        (await Practice.Get<OpenCourse>().Run(Practice.Practitioner, race, Cancel))!
            .Course!
            .Value
            .Sheet;

    private static string Line(IRenderedComponent<CoursePage> page, string name) =>
        page.FindAll(".target-line")
            .Single(l =>
                l.QuerySelector(".why")!.TextContent.StartsWith(name, StringComparison.Ordinal)
            )
            .QuerySelector(".aim")!
            .TextContent;
}
