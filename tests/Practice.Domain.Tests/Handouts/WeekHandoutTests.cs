using Practice.Domain.Screening;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;

namespace Practice.Domain.Tests.Handouts;

public sealed class WeekHandoutTests
{
    public static TheoryData<string> Papers => [.. SampleWeekPapers.All];

    [Theory]
    [InlineData("week-full")]
    [InlineData("week-number-free")]
    [InlineData("week-american")]
    [InlineData("shopping-full")]
    [InlineData("packing-full")]
    [InlineData("card-full")]
    [InlineData("card-number-free")]
    public void The_words_of_a_paper_are_as_approved(string paper) =>
        Approved.Text(PlainText.Of(SampleWeekPapers.Doc(paper)), paper);

    [Theory]
    [InlineData("week-number-free")]
    [InlineData("shopping-number-free")]
    [InlineData("packing-number-free")]
    [InlineData("card-number-free")]
    public void A_number_free_paper_holds_no_number_with_a_unit(string paper)
    {
        Assert.Empty(NumberFree.Violations(PlainText.Of(SampleWeekPapers.Doc(paper))));
        Assert.All(
            PdfText.Pages(SampleWeekPapers.Pdf(paper)),
            page => Assert.Empty(NumberFree.Violations(page))
        );
    }

    [Theory]
    [InlineData("week-full")]
    [InlineData("card-full")]
    public void The_same_paper_is_the_same_file(string paper) =>
        Assert.Equal(
            SampleWeekPapers.Pdf(paper),
            Practice.Handouts.HandoutPdf.Render(SampleWeekPapers.Doc(paper))
        );

    [Theory]
    [InlineData("card-full", 595.3, 841.9)]
    [InlineData("card-american", 612, 792)]
    public void A_race_card_is_one_sheet_to_be_folded(string paper, double width, double height)
    {
        using var document = UglyToad.PdfPig.PdfDocument.Open(SampleWeekPapers.Pdf(paper));
        var page = Assert.Single(document.GetPages());
        Assert.Equal((width, height), (Math.Round(page.Width, 1), Math.Round(page.Height, 1)));
        // nothing crosses a fold
        Assert.All(
            page.Letters,
            l =>
            {
                Assert.False(
                    l.BoundingBox.Left < width / 2 - 1 && l.BoundingBox.Right > width / 2 + 1
                );
                Assert.False(
                    l.BoundingBox.Bottom < height / 2 - 1 && l.BoundingBox.Top > height / 2 + 1
                );
            }
        );
    }

    [Fact]
    public void Cautions_that_do_not_fit_behind_a_card_go_on_inside_the_same_sheet()
    {
        var sample = SamplePapers.All["full"];
        var plan = SampleWeekPapers.Plan(sample);
        var more = Enumerable
            .Range(1, 12)
            .Select(n => plan.Cautions[0] with { Text = $"Caution {n}: {plan.Cautions[0].Text}" });
        var card = HandoutPdf.Render(
            RaceCard.Build(plan with { Cautions = [.. more] }, sample.Practice, sample.Options)
        );
        var page = Assert.Single(PdfText.Pages(card));
        Assert.Contains("Caution 12", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_curve_of_fuel_explains_and_is_kept_from_readers_without_numbers()
    {
        var text = PlainText.Of(SampleWeekPapers.Doc("week-full"));
        Assert.Contains("to explain, not to prescribe", text, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "Fuel in legs",
            PlainText.Of(SampleWeekPapers.Doc("week-number-free")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_client_in_another_zone_reads_both_clocks()
    {
        var text = PlainText.Of(SampleWeekPapers.Doc("week-full"));
        Assert.Contains("05:30 Pre-race meal (00:30 at home)", text, StringComparison.Ordinal);
    }
}
