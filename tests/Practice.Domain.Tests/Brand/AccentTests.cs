using Practice.Domain.Practices;
using Practice.Domain.Quantities;

namespace Practice.Domain.Tests.Brand;

public class AccentTests
{
    // WCAG 2.2, relative luminance: red 0.2126, green 0.7152, blue 0.0722; contrast (L1 + 0.05) / (L2 + 0.05)
    [Theory]
    [InlineData("#FF0000", 5.252, 3.998)]
    [InlineData("#00FF00", 15.304, 1.372)]
    [InlineData("#0000FF", 2.444, 8.592)]
    [InlineData("#FFFFFF", 21, 1)]
    [InlineData("#000000", 1, 21)]
    public void Contrast_is_that_of_the_formula(string accent, double toBlack, double toWhite)
    {
        var colour = Colour.Parse(accent);
        Assert.Equal(toBlack, colour.ContrastWith(Colour.Black), 0.001);
        Assert.Equal(toWhite, colour.ContrastWith(Colour.White), 0.001);
    }

    [Fact]
    public void Words_can_be_read_on_every_accent_there_is()
    {
        for (var red = 0; red < 256; red += 5)
        for (var green = 0; green < 256; green += 5)
        for (var blue = 0; blue < 256; blue += 5)
        {
            var reading = AccentReading.Of(new((byte)red, (byte)green, (byte)blue));
            Assert.True(reading.ContrastOfText >= Colour.Readable, $"{red} {green} {blue}");
        }
    }

    [Theory]
    [InlineData("#0B6E62", true, true)]
    [InlineData("#3B9C92", true, false)]
    [InlineData("#FFD400", false, false)]
    public void A_faint_accent_is_told(string accent, bool isSeen, bool isRead)
    {
        var reading = AccentReading.Of(Colour.Parse(accent));
        Assert.Equal((isSeen, isRead), (reading.IsSeenOnWhite, reading.IsReadOnWhite));
    }

    [Theory]
    [InlineData("", "#0B6E62", "")]
    [InlineData("   ", "#0B6E62", "")]
    [InlineData("Larch House", "teal", "")]
    [InlineData("Larch\u0000House", "#0B6E62", "")]
    [InlineData("Larch House", "#0B6E62", "one\u0007two")]
    public void A_face_that_cannot_be_kept_is_refused(string name, string accent, string footer)
    {
        var details = new BrandDetails
        {
            Name = name,
            Accent = accent,
            Footer = footer,
        };
        Assert.Throws<ArgumentException>(() =>
            details.ApplyTo(new PracticeProfile { PracticeId = Guid.Empty, Name = "Before" })
        );
    }

    [Fact]
    public void Half_a_character_is_told_and_a_whole_one_kept()
    {
        Assert.NotNull(TypedText.Problem("half \ud83d", 100));
        Assert.Null(TypedText.Problem("whole 🍚", 100));
        Assert.Null(TypedText.Problem("two\nlines", 100, ofLines: true));
        Assert.NotNull(TypedText.Problem("two\nlines", 100));
        Assert.NotNull(TypedText.Problem(new string('x', 101), 100));
    }
}
