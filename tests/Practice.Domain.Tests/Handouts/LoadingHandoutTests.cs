using System.Text.RegularExpressions;
using Practice.Domain.Evidence;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;

namespace Practice.Domain.Tests.Handouts;

public sealed partial class LoadingHandoutTests
{
    [Theory]
    [InlineData("full")]
    [InlineData("american")]
    [InlineData("number-free")]
    [InlineData("large-print")]
    public void The_words_of_a_paper_are_as_approved(string paper) =>
        Approved.Text(PlainText.Of(SamplePapers.Doc(paper)), $"loading-{paper}");

    [Theory]
    [InlineData("full")]
    [InlineData("long")]
    [InlineData("american")]
    public void Totals_on_paper_are_the_totals_of_the_plan_and_of_the_printed_rows(string paper)
    {
        var plan = SamplePapers.All[paper].Plan();
        var tables = Tables(SamplePapers.Doc(paper)).ToList();
        Assert.Equal(plan.Days.Length, tables.Count);
        foreach (var (day, table) in plan.Days.Zip(tables))
        {
            var total = Number(table.Total!.Value);
            Assert.Equal(Apportion.Whole(day.Totals.CarbohydrateG), total);
            Assert.Equal(total, table.Groups.Sum(g => Number(g.Head.Note)));
            Assert.All(
                table.Groups,
                group =>
                    Assert.Equal(Number(group.Head.Note), group.Rows.Sum(r => Number(r[^1].Plain)))
            );
        }
    }

    [Theory]
    [InlineData("full", "Drink 500 ml with breakfast. Good legs!")]
    [InlineData("number-free", "Good legs!")]
    public void A_practices_closing_stands_last_and_keeps_numbers_from_whom_they_harm(
        string paper,
        string closing
    )
    {
        var sample = SamplePapers.All[paper];
        var practice = sample.Practice with
        {
            Defaults = new()
            {
                Texts = new() { Closing = "Drink 500 ml with breakfast. Good legs!" },
            },
        };
        var doc = SamplePapers.Doc(sample with { Practice = practice });
        var last = Assert.IsType<Quote>(doc.Blocks[^1]);
        Assert.Equal((closing, practice.Name), (last.Words.Plain, last.By));
    }

    [Fact]
    public void Totals_are_drawn_as_the_content_says_them()
    {
        var day = SamplePapers.All["full"].Plan().Days[^1];
        var page = PdfText.Pages(SamplePapers.Pdf("full"))[2];
        Assert.Contains(
            $"{DisplayTotals.Of(day).CarbohydrateG} g carbohydrate",
            page,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            $"{DisplayTotals.Of(day).CarbohydrateG} g",
            page[..page.IndexOf("Notes:", StringComparison.Ordinal)].Trim(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Number_free_paper_holds_no_number_with_a_unit()
    {
        var pdf = SamplePapers.Pdf("number-free");
        Assert.All(PdfText.Pages(pdf), page => Assert.Empty(NumberFree.Violations(page)));
        Assert.Empty(NumberFree.Violations(PlainText.Of(SamplePapers.Doc("number-free"))));
        Assert.Empty(new TaggedPdf(pdf).Of("Figure").Skip(1));
        Assert.NotEmpty(NumberFree.Violations(PdfText.Of(SamplePapers.Pdf("full"))));
    }

    [Theory]
    [InlineData(HandoutVariant.Full)]
    [InlineData(HandoutVariant.NumberFree)]
    [InlineData(HandoutVariant.LargePrint)]
    public void A_number_free_plan_stays_number_free_whatever_is_asked_and_whoever_wrote_in_it(
        HandoutVariant variant
    )
    {
        var sample = SamplePapers.All["number-free"];
        var source = new Source("test", "", Provenance.OwnRule);
        var plan = sample.Plan() with
        {
            Note = "Well done. Have 300 g of rice at noon. Sleep well!",
            Why = "You are 60 kg. It fills the store.",
            Cautions = [new("k", "Stop at 4 mg. Ask first.", true, source)],
            Fluids = new("Drink 500 ml. Then sip.", "Add 2 g of salt."),
        };
        var doc = LoadingHandout.Build(
            plan,
            sample.Practice,
            sample.Options with
            {
                Variant = variant,
            }
        );
        var text = PlainText.Of(doc);
        Assert.Empty(NumberFree.Violations(text));
        Assert.Contains("Well done. Sleep well!", text, StringComparison.Ordinal);
        Assert.Contains("Ask first.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("kilogram", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_with_numbers_can_be_asked_for_without_them()
    {
        var sample = SamplePapers.All["full"];
        var doc = SamplePapers.Doc(
            sample with
            {
                Options = sample.Options with { Variant = HandoutVariant.NumberFree },
            }
        );
        Assert.Empty(NumberFree.Violations(PlainText.Of(doc)));
    }

    [Fact]
    public void Number_free_words_hold_for_every_food_of_the_library_at_every_serving()
    {
        foreach (var food in FoodLibrary.Standard.All)
        foreach (var steps in food.Serving.Steps)
        foreach (var units in Enum.GetValues<HouseholdUnits>())
        {
            var portion = Portion.Of(food, food.Roles[0].Role, steps, units);
            Assert.DoesNotMatch(Digit(), PortionWords.NumberFree(portion, units));
            Assert.Empty(NumberFree.Violations(WithoutNumbers.Name(portion.Name)));
        }
    }

    [Fact]
    public void The_client_reads_the_clients_cautions_and_no_others()
    {
        var sample = SamplePapers.All["full"];
        var source = new Source("test", "", Provenance.OwnRule);
        var plan = sample.Plan() with
        {
            Cautions =
            [
                new("a", "Carry your inhaler.", true, source),
                new("b", "Check ferritin first.", false, source),
            ],
        };
        var text = PlainText.Of(LoadingHandout.Build(plan, sample.Practice, sample.Options));
        Assert.Contains("Carry your inhaler.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ferritin", text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_word_on_salt_stands_where_screening_switched_it_off()
    {
        var sample = SamplePapers.All["full"];
        var plan = sample.Plan();
        var doc = LoadingHandout.Build(
            plan with
            {
                Fluids = plan.Fluids with { Salting = null },
            },
            sample.Practice,
            sample.Options
        );
        Assert.DoesNotContain("salt ", PlainText.Of(doc), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_draft_says_on_every_page_that_it_must_not_be_followed() =>
        Assert.All(
            PdfText.Pages(SamplePapers.Pdf("draft")),
            page =>
                Assert.Contains("not issued, not to be followed", page, StringComparison.Ordinal)
        );

    [Theory]
    [InlineData(7, "6 days to the start")]
    [InlineData(12, "Tomorrow is race day")]
    [InlineData(13, "Today is race day")]
    public void The_countdown_counts_from_today(int today, string expected)
    {
        var sample = SamplePapers.All["full"];
        var doc = SamplePapers.Doc(
            sample with
            {
                Options = sample.Options with { Today = new(2026, 9, today) },
            }
        );
        Assert.Contains(expected, PlainText.Of(doc), StringComparison.Ordinal);
    }

    [Fact]
    public void After_the_race_nothing_is_counted_down()
    {
        var sample = SamplePapers.All["full"];
        var doc = SamplePapers.Doc(
            sample with
            {
                Options = sample.Options with { Today = new(2026, 9, 14) },
            }
        );
        Assert.Null(Assert.IsType<Cover>(doc.Blocks[0]).Countdown);
    }

    [Fact]
    public void A_plan_without_food_still_prints()
    {
        var sample = SamplePapers.All["full"];
        var plan = sample.Plan();
        var empty = plan with
        {
            Days =
            [
                .. plan.Days.Select(d =>
                    d with
                    {
                        Occasions = [.. d.Occasions.Select(o => o with { Portions = [] })],
                    }
                ),
            ],
        };
        var file = HandoutPdf.Render(LoadingHandout.Build(empty, sample.Practice, sample.Options));
        Assert.Contains("Evening meal", PdfText.Of(file), StringComparison.Ordinal);
        Assert.DoesNotContain("Shopping list", PdfText.Of(file), StringComparison.Ordinal);
    }

    private static IEnumerable<Table> Tables(HandoutDoc doc) =>
        doc.Blocks.OfType<Together>().SelectMany(t => t.Blocks).OfType<Table>();

    private static int Number(string text) =>
        int.Parse(
            FirstNumber().Match(text).Value,
            System.Globalization.CultureInfo.InvariantCulture
        );

    [GeneratedRegex(@"\d+")]
    private static partial Regex FirstNumber();

    [GeneratedRegex(@"[\d¼½¾⅓⅔]")]
    private static partial Regex Digit();
}
