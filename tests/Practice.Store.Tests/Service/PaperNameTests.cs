using Practice.Service.Plans;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class PaperNameTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_papers_of_one_plan_may_lie_in_one_folder()
    {
        var draft = await practice.NewDraft(await practice.NewRace(await practice.NewClient()));

        var names = new List<string>();
        foreach (var variant in Enum.GetValues<PaperVariant>())
        {
            var paper = await practice
                .Get<PrintPlan>()
                .Run(practice.Practitioner, draft.Version.Value.Id, null, variant, Cancel);
            names.Add(paper!.FileName);
        }

        Assert.Equal(names.Distinct(), names);
        Assert.Single(names, n => n.EndsWith("-number-free-v1.pdf", StringComparison.Ordinal));
        Assert.All(names, n => Assert.Matches(@"^[\p{L}\p{Nd}-]+\.pdf$", n));
    }
}
