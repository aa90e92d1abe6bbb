using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Practice.Domain.Foods;
using Practice.Service.Foods;
using Practice.TestSupport;
using Practice.Web.Features.Foods;
using Practice.Web.Features.Foods.Measures;
using Practice.Web.Features.Foods.Ours;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class OwnFoodPagesTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    private static readonly (string Field, string Value)[] Porridge =
    [
        ("#name", "Porridge of the house"),
        ("#group", "Cereal"),
        ("#energy", "380"),
        ("#fat", "6"),
        ("#carbohydrate", "68"),
        ("#sugars", "1"),
        ("#fibre", "8"),
        ("#protein", "11"),
        ("#sodium", "5"),
        ("#caffeine", "0"),
        ("#style", "Weighed"),
        ("#least", "40"),
        ("#most", "80"),
        ("#source", "Label"),
    ];

    [Fact]
    public async Task A_food_that_was_typed_is_kept_and_found_among_all_foods()
    {
        var page = Open<OwnFoodPage>();
        await Type(page, Porridge);
        await Tick(page, "Oats");
        await Tick(page, "Oats not certified gluten-free");
        await Tick(page, "Porridge");
        await Tick(page, "Breakfast");
        await page.Find("form").SubmitAsync();

        page.WaitForAssertion(() =>
            Assert.Matches(
                "/foods/ours/[0-9a-f-]{36}$",
                Services.GetRequiredService<NavigationManager>().Uri
            )
        );
        var foods = await Practice.Get<Larder>().Run(Practice.Practitioner, Cancel);
        var kept = Assert.Single(foods.Search("Porridge of the house"));
        Assert.Equal([Allergen.Oats], kept.Allergens);
        Assert.Equal(68, kept.Per100G.CarbohydrateG);

        var all = Open<FoodsPage>();
        all.WaitForAssertion(() =>
            Assert.Contains("of your own", all.Find(".page-head").TextContent, Ordinal)
        );
        var list = Open<OurFoodsPage>();
        list.WaitForAssertion(() =>
            Assert.Single(
                list.FindAll("li .name a"),
                name => name.TextContent == "Porridge of the house"
            )
        );
    }

    [Fact]
    public async Task Without_a_word_on_allergens_nothing_is_kept_and_nothing_typed_is_lost()
    {
        var page = Open<OwnFoodPage>();
        await Type(page, [.. Porridge, ("#name", "Porridge without a word")]);
        await Tick(page, "Porridge");
        await Tick(page, "Breakfast");
        await page.Find("form").SubmitAsync();

        Assert.Contains(
            "none of them",
            Assert.Single(page.FindAll("fieldset .validation-message")).TextContent,
            Ordinal
        );
        Assert.Equal("Porridge without a word", page.Find("#name").GetAttribute("value"));
        await Tick(page, "None of the 14: I have read the label");
        await page.Find("form").SubmitAsync();
        Assert.Empty(page.FindAll("fieldset .validation-message"));
    }

    [Fact]
    public async Task An_energy_that_does_not_follow_from_its_parts_is_told_with_what_was_reckoned()
    {
        var page = Open<OwnFoodPage>();
        await Type(page, Porridge);
        Assert.Empty(page.FindAll(".odd"));
        await page.Find("#energy").ChangeAsync("250");
        // 4 x (68 + 11) + 9 x 6 + 2 x 8
        Assert.Contains(
            "it would be 386 kcal",
            Assert.Single(page.FindAll(".odd")).TextContent,
            Ordinal
        );
    }

    [Fact]
    public async Task A_name_in_use_is_refused_at_the_name()
    {
        await Keep("Twice named");
        var id = await Keep("Once named");
        var page = Open<OwnFoodPage>(p => p.Add(b => b.Id, id));
        page.WaitForElement("form");
        await page.Find("#name").ChangeAsync("twice NAMED");
        await page.Find("form").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("food of that name", page.Markup, Ordinal));
        Assert.Equal("twice NAMED", page.Find("#name").GetAttribute("value"));
    }

    [Fact]
    public async Task A_food_is_retired_and_put_back()
    {
        var id = await Keep("Comes and goes");
        var page = Open<OwnFoodPage>(p => p.Add(b => b.Id, id));
        await page.WaitForElement(".actions button").ClickAsync();
        page.WaitForAssertion(() => Assert.Contains("Retired:", page.Markup, Ordinal));
        Assert.Empty(await Found("Comes and goes"));
        await page.Find(".actions button").ClickAsync();
        page.WaitForAssertion(() => Assert.DoesNotContain("Retired:", page.Markup, Ordinal));
        Assert.Single(await Found("Comes and goes"));
    }

    [Fact]
    public async Task An_assistant_reads_the_foods_and_changes_none()
    {
        var id = await Keep("Only to read");
        var form = Open<OwnFoodPage>(p => p.Add(b => b.Id, id), Practice.Assistant);
        form.WaitForAssertion(() => Assert.Contains("practitioner's", form.Markup, Ordinal));
        Assert.Empty(form.FindAll("form"));

        var list = Open<OurFoodsPage>(desk: Practice.Assistant);
        list.WaitForAssertion(() => Assert.Contains("Only to read", list.Markup, Ordinal));
        Assert.Empty(list.FindAll("main a, .rows a, .actions a"));
        Assert.Empty(Open<MeasuresPage>(desk: Practice.Assistant).FindAll("form"));
    }

    private async Task<Guid> Keep(string name)
    {
        var form = new FoodForm { NoAllergens = true };
        var sheet = form.Read() with
        {
            Name = name,
            Group = FoodGroup.Cereal,
            Per100G = new()
            {
                EnergyKcal = 380,
                CarbohydrateG = 80,
                SugarsG = 1,
                FibreG = 2,
                ProteinG = 8,
                FatG = 2,
                SodiumMg = 5,
                CaffeineMg = 0,
            },
            Serving = new()
            {
                Style = ServingStyle.Weighed,
                Least = 40,
                Most = 80,
            },
            Roles = [MealRole.Porridge],
            Occasions = [OccasionKind.Breakfast],
        };
        var kept = await Practice.Get<KeepFood>().Run(Practice.Practitioner, sheet, Cancel);
        return Assert.IsType<FoodKept>(kept).Key;
    }

    private async Task<IEnumerable<Food>> Found(string name) =>
        (await Practice.Get<Larder>().Run(Practice.Practitioner, Cancel)).Search(name);

    private static async Task Type(
        IRenderedComponent<OwnFoodPage> page,
        IEnumerable<(string Field, string Value)> fields
    )
    {
        page.WaitForElement("#name");
        foreach (var (field, value) in fields)
            await page.Find(field).ChangeAsync(value);
    }

    private static Task Tick(IRenderedComponent<OwnFoodPage> page, string label) =>
        page.FindAll("label.tick")
            .Single(l => l.TextContent.Trim() == label)
            .QuerySelector("input")!
            .ChangeAsync(true);

    private const StringComparison Ordinal = StringComparison.Ordinal;
}
