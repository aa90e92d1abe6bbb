using System.Xml.Linq;
using Practice.Handouts;
using Practice.Handouts.Blocks;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Practice.Domain.Tests.Handouts;

public sealed class HandoutPdfTests
{
    public static TheoryData<string> Papers => [.. SamplePapers.All.Keys];

    [Theory, MemberData(nameof(Papers))]
    public void The_same_paper_gives_the_same_bytes(string paper) =>
        Assert.Equal(SamplePapers.Pdf(paper), HandoutPdf.Render(SamplePapers.Doc(paper)));

    [Fact]
    public async Task Papers_rendered_at_once_do_not_disturb_one_another()
    {
        var papers = Enumerable.Repeat(SamplePapers.All.Keys, 4).SelectMany(k => k).ToList();
        var rendered = await Task.WhenAll(
            papers.Select(p => Task.Run(() => HandoutPdf.Render(SamplePapers.Doc(p))))
        );
        Assert.All(
            papers.Zip(rendered),
            pair => Assert.Equal(SamplePapers.Pdf(pair.First), pair.Second)
        );
    }

    [Theory]
    [InlineData("full", 595, 842, 4)]
    [InlineData("american", 612, 792, 4)]
    [InlineData("number-free", 595, 842, 4)]
    [InlineData("large-print", 595, 842, 9)]
    [InlineData("long", 595, 842, 7)]
    public void Pages_have_the_size_of_the_paper_and_say_which_of_how_many_they_are(
        string paper,
        int width,
        int height,
        int count
    )
    {
        using var document = PdfDocument.Open(SamplePapers.Pdf(paper));
        var pages = document.GetPages().ToList();
        Assert.Equal(count, pages.Count);
        Assert.All(
            pages,
            page =>
            {
                Assert.Equal(width, page.Width, 0.5);
                Assert.Equal(height, page.Height, 0.5);
                Assert.Contains(
                    $"Page {page.Number} of {count}",
                    page.Text,
                    StringComparison.Ordinal
                );
            }
        );
    }

    [Theory, MemberData(nameof(Papers))]
    public void Nothing_is_drawn_outside_the_page(string paper)
    {
        using var document = PdfDocument.Open(SamplePapers.Pdf(paper));
        Assert.All(
            document.GetPages(),
            page =>
                Assert.All(
                    page.Letters,
                    letter =>
                    {
                        Assert.InRange(letter.StartBaseLine.X, 0, page.Width);
                        Assert.InRange(letter.EndBaseLine.X, 0, page.Width - 20);
                        Assert.InRange(letter.StartBaseLine.Y, 15, page.Height - 10);
                    }
                )
        );
    }

    [Theory]
    [InlineData("Zoë Łukasz")]
    [InlineData("Ελένη Παπαδάκη")]
    [InlineData("Кирилл Орлов")]
    [InlineData("Nguyễn Thị Ánh")]
    [InlineData("O'Brien-Çelik <&> (x) \\ %")]
    public void Names_in_latin_greek_and_cyrillic_are_on_paper_and_can_be_found(string name)
    {
        var sample = SamplePapers.All["full"] with { Client = name };
        var file = HandoutPdf.Render(SamplePapers.Doc(sample));
        Assert.All(
            PdfText.Pages(file),
            page => Assert.Contains(name, page, StringComparison.Ordinal)
        );
        using var document = PdfDocument.Open(file);
        Assert.Contains(name, document.Information.Title, StringComparison.Ordinal);
        Assert.True(document.TryGetXmpMetadata(out var metadata));
        Assert.Contains(name, Xml(metadata).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_typed_with_combining_marks_is_composed()
    {
        var decomposed = "Zoë".Normalize(System.Text.NormalizationForm.FormD);
        var sample = SamplePapers.All["full"] with { Client = decomposed };
        Assert.Contains(
            "Zoë",
            PdfText.Of(HandoutPdf.Render(SamplePapers.Doc(sample))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Characters_without_a_glyph_are_named_and_printed_as_question_marks()
    {
        var doc = SamplePapers.Doc(SamplePapers.All["full"] with { Client = "山田 Aiko 🍙" });
        Assert.Equal(["山", "田", "🍙"], HandoutPdf.MissingCharacters(doc));
        Assert.Contains("?? Aiko ?", PdfText.Of(HandoutPdf.Render(doc)), StringComparison.Ordinal);
        Assert.Empty(HandoutPdf.MissingCharacters(SamplePapers.Doc("draft")));
    }

    [Theory, MemberData(nameof(Papers))]
    public void Fonts_are_embedded_as_subsets(string paper)
    {
        var pdf = new TaggedPdf(SamplePapers.Pdf(paper));
        var names = new List<string>();
        using var document = PdfDocument.Open(SamplePapers.Pdf(paper));
        foreach (var letter in document.GetPages().SelectMany(p => p.Letters))
            names.Add(letter.FontName!);
        Assert.All(names.Distinct(), name => Assert.Matches("^INTER[A-D]\\+Inter", name));
        Assert.True(SamplePapers.Pdf(paper).Length < 120_000);
        Assert.NotNull(pdf.Catalog);
    }

    [Fact]
    public void Every_character_drawn_can_be_copied_as_text()
    {
        using var document = PdfDocument.Open(SamplePapers.Pdf("full"));
        Assert.All(
            document.GetPages().SelectMany(p => p.Letters),
            letter => Assert.False(string.IsNullOrEmpty(letter.Value))
        );
    }

    [Fact]
    public void A_cell_taller_than_a_page_goes_on_overleaf_without_losing_a_word()
    {
        var words = string.Join(' ', Enumerable.Range(1, 1500).Select(i => $"w{i}"));
        var file = Render(
            new Table(
                "A long story",
                [new("When", 1), new("What", 3), new("How much", 2)],
                [
                    new(
                        new("08:00", "Breakfast"),
                        [
                            [words, "a lot"],
                        ]
                    ),
                ],
                null
            )
        );
        var text = PdfText.Of(file);
        Assert.All(Enumerable.Range(1, 1500), i => Assert.Matches($@"w{i}(?!\d)", text));
        Assert.True(PdfText.Pages(file).Count > 1);
        Assert.All(
            PdfText.Pages(file).Skip(1),
            page => Assert.Contains("How much", page, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_long_text_and_a_word_without_spaces_stay_on_the_paper()
    {
        var file = Render(
            new Callout(
                true,
                "Please read",
                [
                    new Bullets([.. Enumerable.Range(1, 120).Select(i => (Words)$"Point {i}.")]),
                    new Paragraph(new string('x', 2000)),
                ]
            )
        );
        Assert.True(PdfText.Pages(file).Count > 1);
        Assert.Equal(2000, PdfText.Of(file).Count(c => c == 'x'));
        Assert.Contains("Point 120.", PdfText.Of(file), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("full")]
    [InlineData("american")]
    [InlineData("long")]
    [InlineData("number-free")]
    public void A_day_is_not_torn_apart_when_it_fits_one_page(string paper)
    {
        var eve = PdfText
            .Pages(SamplePapers.Pdf(paper))
            .Single(page => page.Contains("The day before", StringComparison.Ordinal));
        Assert.Contains("Corn flakes", eve, StringComparison.Ordinal);
        Assert.Contains("Rice pudding", eve, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 200)]
    [InlineData(12, 20)]
    [InlineData(60, 3)]
    public void A_shopping_list_of_any_length_keeps_every_line_on_the_paper(int sections, int items)
    {
        var file = Render(
            new CheckList([
                .. Enumerable
                    .Range(1, sections)
                    .Select(s => new CheckSection(
                        $"Section {s}",
                        [
                            .. Enumerable
                                .Range(1, items)
                                .Select(i => new CheckItem($"Food {s}-{i}.", "1 kg")),
                        ]
                    )),
            ])
        );
        using var document = PdfDocument.Open(file);
        var lowest = document.GetPages().SelectMany(p => p.Letters).Min(l => l.StartBaseLine.Y);
        Assert.True(lowest > 20);
        var text = PdfText.Of(file);
        for (var s = 1; s <= sections; s++)
        for (var i = 1; i <= items; i++)
            Assert.Contains($"Food {s}-{i}.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_logo_that_can_not_be_printed_is_left_out()
    {
        ReadOnlyMemory<byte> garbage = new byte[] { 1, 2, 3 };
        Assert.False(HandoutPdf.CanPrintLogo(garbage));
        Assert.True(HandoutPdf.CanPrintLogo(SampleLogo.Png));
        var sample = SamplePapers.All["full"];
        var file = HandoutPdf.Render(
            SamplePapers.Doc(
                sample with
                {
                    Practice = sample.Practice with { LogoPng = [.. garbage.Span] },
                }
            )
        );
        Assert.Equal(2, new TaggedPdf(file).Of("Figure").Count());
        Assert.Equal(3, new TaggedPdf(SamplePapers.Pdf("full")).Of("Figure").Count());
    }

    [Theory]
    [InlineData("")]
    [InlineData("teal")]
    [InlineData("#12345")]
    [InlineData("#GGGGGG")]
    public void An_accent_that_is_no_colour_prints_in_our_own(string accent)
    {
        var sample = SamplePapers.All["full"];
        Assert.Equal(
            SamplePapers.Pdf("full"),
            HandoutPdf.Render(
                SamplePapers.Doc(
                    sample with
                    {
                        Practice = sample.Practice with { Accent = accent },
                    }
                )
            )
        );
    }

    // by its bytes: the reader of the test library takes UTF-8 for Latin-1
    private static XDocument Xml(XmpMetadata metadata)
    {
        using var bytes = new MemoryStream([.. metadata.GetXmlBytes()]);
        return XDocument.Load(bytes);
    }

    private static byte[] Render(params Block[] blocks)
    {
        var doc = SamplePapers.Doc("full");
        return HandoutPdf.Render(
            doc with
            {
                Blocks = [doc.Blocks[0], new Heading(2, "Test"), .. blocks],
            }
        );
    }
}
