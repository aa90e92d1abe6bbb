using Practice.Handouts;
using Practice.Handouts.Content;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Graphics.Operations.SpecialGraphicsState;
using UglyToad.PdfPig.Graphics.Operations.TextObjects;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Tokens;

namespace Practice.Domain.Tests.Handouts;

/// <summary>The rules of PDF/UA-1 that a program can check; no screen reader and no validator was at hand.</summary>
public sealed class HandoutTagTests
{
    public static TheoryData<string> Papers =>
        [
            .. SamplePapers.All.Keys,
            "week-full",
            "week-number-free",
            "week-large-print",
            "card-full",
            "card-american",
        ];

    private static byte[] Pdf(string paper) =>
        SamplePapers.All.ContainsKey(paper) ? SamplePapers.Pdf(paper) : SampleWeekPapers.Pdf(paper);

    [Theory, MemberData(nameof(Papers))]
    public void Marked_contents_and_text_objects_nest_and_everything_painted_is_tagged_or_artifact(
        string paper
    )
    {
        using var document = PdfDocument.Open(Pdf(paper));
        foreach (var page in document.GetPages())
        {
            var open = new Stack<char>();
            foreach (var operation in page.Operations)
                Follow(operation, open);
            Assert.Empty(open);
        }
    }

    [Theory, MemberData(nameof(Papers))]
    public void Structure_tree_and_parent_tree_agree(string paper)
    {
        var pdf = new TaggedPdf(Pdf(paper));
        var byTree = pdf
            .Elements.SelectMany(e => e.Contents.Select(c => (c.Page, c.Id, e.Reference)))
            .ToHashSet();
        var byParents = pdf.ParentTree().ToHashSet();
        Assert.True(byTree.SetEquals(byParents));
        Assert.True(byTree.Count > 20);
        Assert.All(
            pdf.Elements.SelectMany(e => e.Children.Select(c => (Parent: e, Child: c))),
            pair =>
                Assert.Equal(
                    pair.Parent.Reference,
                    ((IndirectReferenceToken)pair.Child.Data.Data["P"]).Data
                )
        );
    }

    [Theory, MemberData(nameof(Papers))]
    public void The_document_says_its_language_and_title_and_that_it_is_tagged(string paper)
    {
        var pdf = new TaggedPdf(Pdf(paper));
        Assert.StartsWith("en-", pdf.Text(pdf.Catalog, "Lang"), StringComparison.Ordinal);
        var view = pdf.Dictionary(pdf.Catalog, "ViewerPreferences")!;
        Assert.Equal(BooleanToken.True, view.Data["DisplayDocTitle"]);
        var mark = pdf.Dictionary(pdf.Catalog, "MarkInfo")!;
        Assert.Equal(BooleanToken.True, mark.Data["Marked"]);
        using var document = PdfDocument.Open(Pdf(paper));
        Assert.Matches("^[A-Z][a-z-]+( [a-z]+)? for .+: .+", document.Information.Title);
        Assert.True(document.TryGetXmpMetadata(out var metadata));
        var xmp = metadata.GetXDocument().ToString();
        Assert.Contains("<pdfuaid:part>1</pdfuaid:part>", xmp, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Papers))]
    public void Headings_begin_at_the_top_and_go_down_one_level_at_a_time(string paper)
    {
        var levels = new TaggedPdf(Pdf(paper))
            .Elements.Where(e => e.Type is ['H', >= '1' and <= '6'])
            .Select(e => e.Type[1] - '0')
            .ToList();
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
    }

    [Theory, MemberData(nameof(Papers))]
    public void Tables_have_a_summary_head_cells_with_scope_and_rows_of_one_width(string paper)
    {
        var pdf = new TaggedPdf(Pdf(paper));
        var tables = pdf.Of("Table").ToList();
        Assert.NotEmpty(tables);
        Assert.All(tables, t => Assert.NotNull(pdf.TableAttribute(t, "Summary")));
        Assert.All(pdf.Of("TH"), th => Assert.NotNull(pdf.TableAttribute(th, "Scope")));
        Assert.All(
            tables,
            table =>
            {
                var rows = table.All.Where(e => e.Type == "TR").ToList();
                var width = rows[0].Children.Count;
                var covered = 0;
                foreach (var row in rows)
                {
                    var span = row.Children.Sum(cell => Span(pdf, cell, "ColSpan"));
                    Assert.Equal(width, span + (covered > 0 ? 1 : 0));
                    var rowSpan = row.Children.Max(cell => Span(pdf, cell, "RowSpan"));
                    covered = Math.Max(covered - 1, rowSpan - 1);
                }
            }
        );
    }

    [Theory, MemberData(nameof(Papers))]
    public void Figures_have_an_alternative_and_a_box(string paper)
    {
        var pdf = new TaggedPdf(Pdf(paper));
        Assert.All(
            pdf.Of("Figure"),
            figure =>
            {
                Assert.False(string.IsNullOrWhiteSpace(pdf.Text(figure.Data, "Alt")));
                Assert.NotNull(pdf.TableAttribute(figure, "BBox"));
            }
        );
    }

    [Fact]
    public void Lists_hold_items_and_items_hold_a_body()
    {
        var pdf = new TaggedPdf(SamplePapers.Pdf("full"));
        Assert.All(pdf.Of("L"), l => Assert.All(l.Children, i => Assert.Equal("LI", i.Type)));
        Assert.All(pdf.Of("LI"), i => Assert.Contains(i.Children, c => c.Type == "LBody"));
    }

    [Fact]
    public void A_skipped_heading_level_is_refused()
    {
        var doc = SamplePapers.Doc("full");
        var skipping = doc with
        {
            Blocks = [doc.Blocks[0], new Practice.Handouts.Blocks.Heading(3, "Too deep")],
        };
        Assert.Throws<InvalidOperationException>(() => HandoutPdf.Render(skipping));
    }

    private static int Span(TaggedPdf pdf, TagElement cell, string key) =>
        pdf.TableAttribute(cell, key) is NumericToken number ? number.Int : 1;

    private static void Follow(IGraphicsStateOperation operation, Stack<char> open)
    {
        switch (operation)
        {
            case BeginText:
                Assert.DoesNotContain('T', open);
                open.Push('T');
                break;
            case EndText:
                Assert.Equal('T', open.Pop());
                break;
            case BeginMarkedContent or BeginMarkedContentWithProperties:
                open.Push('M');
                break;
            case EndMarkedContent:
                Assert.Equal('M', open.Pop());
                break;
            case Push or Pop:
                Assert.DoesNotContain('T', open);
                break;
            case ShowText or ShowTextsWithPositioning or InvokeNamedXObject:
            case FillPathNonZeroWinding or FillPathEvenOddRule or StrokePath or CloseAndStrokePath:
                Assert.Contains('M', open);
                break;
        }
    }
}
