using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using Practice.Handouts.Content;
using UglyToad.PdfPig;

namespace Practice.Domain.Tests.Handouts;

public sealed class RehearsalPapersTests
{
    private static readonly SamplePlan Sample = SamplePapers.All["full"];
    private const string Address =
        "https://practice.example/p/aB3dE5fG7hJ9kL1mN3pQ5rS7tU9vW1xY3zA5bC7dE9f";

    [Theory]
    [InlineData("sheet")]
    [InlineData("sheet-number-free")]
    [InlineData("report")]
    public void The_words_of_a_paper_are_as_approved(string paper) =>
        Approved.Text(PlainText.Of(Doc(paper)), $"rehearsal-{paper}");

    [Theory]
    [InlineData("sheet", PaperSize.A4, 595, 842)]
    [InlineData("sheet-number-free", PaperSize.A4, 595, 842)]
    [InlineData("report", PaperSize.Letter, 612, 792)]
    public void Pages_have_the_size_of_the_paper_and_nothing_lies_outside(
        string paper,
        PaperSize size,
        int width,
        int height
    )
    {
        using var document = PdfDocument.Open(HandoutPdf.Render(Doc(paper) with { Paper = size }));
        Assert.All(
            document.GetPages(),
            page =>
            {
                Assert.Equal(width, page.Width, 0.5);
                Assert.Equal(height, page.Height, 0.5);
                Assert.All(
                    page.Letters,
                    letter => Assert.InRange(letter.EndBaseLine.X, 0, page.Width - 20)
                );
            }
        );
    }

    [Theory]
    [InlineData("sheet")]
    [InlineData("sheet-number-free")]
    [InlineData("report")]
    public void Everything_on_it_has_its_place_in_the_structure(string paper)
    {
        var pdf = new TaggedPdf(HandoutPdf.Render(Doc(paper)));
        var byTree = pdf
            .Elements.SelectMany(e => e.Contents.Select(c => (c.Page, c.Id, e.Reference)))
            .ToHashSet();
        Assert.True(byTree.SetEquals(pdf.ParentTree()));
        Assert.True(byTree.Count > 20);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Without_numbers_no_number_with_a_unit_is_on_it_whoever_asks(bool planIsNumberFree)
    {
        var doc = Sheet(numberFree: true, planIsNumberFree);
        Assert.Empty(NumberFree.Violations(PlainText.Of(doc)));
        Assert.Empty(
            NumberFree.Violations(PlainText.Of(Sheet(numberFree: !planIsNumberFree, true)))
        );
        Assert.All(
            PdfText.Pages(HandoutPdf.Render(doc)),
            page => Assert.Empty(NumberFree.Violations(page))
        );
        Assert.NotEmpty(NumberFree.Violations(PlainText.Of(Sheet(false, false))));
    }

    [Fact]
    public void The_code_for_the_phone_is_drawn_with_words_for_those_who_can_not_see_it()
    {
        var code = Assert.Single(Sheet(false, false).Blocks.OfType<CameraCode>());
        Assert.Equal(QrSquares.Of(Address).Size, code.Code.Size);
        var pdf = new TaggedPdf(HandoutPdf.Render(Sheet(false, false)));
        Assert.Single(pdf.Of("Figure").Skip(1));
        Assert.DoesNotContain("/p/", PlainText.Of(Sheet(false, false)), StringComparison.Ordinal);
    }

    [Fact]
    public void Body_mass_is_not_asked_for_where_screening_forbids_weighing()
    {
        var rehearsal = Rehearsed(Sample.Plan());
        var doc = RehearsalSheet.Build(
            rehearsal,
            Sample.Practice,
            Options(false) with
            {
                MassAllowed = false,
            }
        );
        Assert.DoesNotContain("mass", PlainText.Of(doc), StringComparison.OrdinalIgnoreCase);
    }

    private static HandoutDoc Doc(string paper) =>
        paper switch
        {
            "sheet" => Sheet(false, false),
            "sheet-number-free" => Sheet(true, false),
            _ => Report(),
        };

    private static RehearsalSheetOptions Options(bool numberFree) =>
        new()
        {
            NumberFree = numberFree,
            By = "Robin Larkfield",
            Today = new(2026, 8, 10),
            MassAllowed = true,
            PhoneAddress = Address,
        };

    private static HandoutDoc Sheet(bool numberFree, bool planIsNumberFree) =>
        RehearsalSheet.Build(
            Rehearsed(Sample.Plan() with { NumberFree = planIsNumberFree }),
            Sample.Practice,
            Options(numberFree)
        );

    private static Rehearsal Rehearsed(RaceWeekPlan plan) =>
        Rehearsal.Book(
            Guid.Empty,
            Guid.Empty,
            Guid.Empty,
            new()
            {
                RunOn = new(2026, 8, 23),
                Kind = RehearsalKind.Full,
                Part = new(Guid.Empty, 2),
                Breakfast = new(2.5m, 180, "Porridge with 40 g honey"),
                RunFuel = new(60, 500, "A gel each half hour"),
                Reason = "White rice for pasta this time. All of the 600 g.",
            },
            plan
        );

    private static HandoutDoc Report()
    {
        var rehearsal = Rehearsed(Sample.Plan());
        var eaten = rehearsal.Sittings().Select(EatenOccasion.AsPlanned).ToList();
        eaten[0] = eaten[0] with
        {
            Portions = [EatenPortion.Left(eaten[0].Portions[0].FoodId), .. eaten[0].Portions[1..]],
        };
        rehearsal.Tell(
            new()
            {
                ReceivedAt = Instant.FromUtc(2026, 8, 24, 9, 0),
                Occasions = [.. eaten],
                Symptoms = [new(SymptomItem.Nausea, SymptomMoment.During, 6, 95)],
                MassBefore = BodyMass.OfKilograms(62),
                MassAfter = BodyMass.OfKilograms(61),
                Note = "Queasy in the last third.",
            }
        );
        rehearsal.Review(
            new(
                TrialVerdict.Fail,
                "Robin Larkfield",
                Instant.FromUtc(2026, 8, 25, 9, 0),
                "One step back."
            )
            {
                Answers =
                [
                    new("step-back", "A quarter less: 7.5 g/kg", true),
                    new("shift-to-drinks", "Drinks bring 40 % of the carbohydrate", false),
                ],
            }
        );
        var review = RehearsalReview.Of(
            rehearsal.Details,
            rehearsal.Plan,
            rehearsal.Feedback!,
            SymptomThresholds.House
        );
        var changed = new HalveFood(rehearsal.Sittings()[2].Portions[0].FoodId).Apply(
            rehearsal.Plan
        );
        return TrialReport.Build(
            new()
            {
                Rehearsal = rehearsal,
                Review = review,
                Suspects = SuspectFoods.Of(FoodTrial.Of([review], 62)),
                Diff = PlanDiff.Of(rehearsal.Plan, changed),
                NextVersion = 2,
                FoodName = id => FoodLibrary.Standard.Find(id)?.Name ?? id,
                MassAllowed = true,
                Today = new(2026, 8, 25),
            },
            Sample.Practice
        );
    }
}
