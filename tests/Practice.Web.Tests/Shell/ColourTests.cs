using Practice.Domain.Practices;
using Practice.Web.Shell;

namespace Practice.Web.Tests.Shell;

public class ColourTests
{
    // WCAG 2.2: black on white is 21:1, and no colour stands out from itself
    [Fact]
    public void Contrast_is_that_of_the_guideline()
    {
        Assert.Equal(21, Colour.Black.ContrastWith(Colour.White), 3);
        Assert.Equal(1, Colour.Parse("#0B6E62").ContrastWith(Colour.Parse("#0B6E62")), 6);
        Assert.Equal(4.54, Colour.Parse("#767676").ContrastWith(Colour.White), 2);
    }

    [Theory]
    [InlineData("0B6E62")]
    [InlineData("#0B6E6")]
    [InlineData("#0B6EZZ")]
    [InlineData("rgb(1,2,3)")]
    [InlineData("")]
    [InlineData(null)]
    public void What_is_no_colour_is_told_and_not_thrown(string? typed) =>
        Assert.False(Colour.TryParse(typed, out _));

    public static TheoryData<string> Accents =>
        ["#0B6E62", "#FFEE00", "#FFFFFF", "#000000", "#FF00FF", "#7FDBFF", "#123456"];

    [Theory, MemberData(nameof(Accents))]
    public void Every_accent_a_practice_may_choose_can_be_read(string accent)
    {
        foreach (
            var tones in new[]
            {
                Tones.Light(Colour.Parse(accent)),
                Tones.Dark(Colour.Parse(accent)),
            }
        )
        {
            Assert.All(
                [tones.Paper, tones.Card, tones.Well],
                ground => Assert.True(tones.Accent.ContrastWith(ground) >= Colour.Readable)
            );
            Assert.True(tones.OnAccent.ContrastWith(tones.Accent) >= Colour.Readable);
        }
    }

    [Fact]
    public void Every_tone_that_bears_words_can_be_read_on_every_ground()
    {
        foreach (
            var tones in new[] { Tones.Light(Tones.DefaultAccent), Tones.Dark(Tones.DefaultAccent) }
        )
        foreach (var ground in new[] { tones.Paper, tones.Card, tones.Well })
            Assert.All(
                [tones.Ink, tones.SoftInk, tones.Good, tones.Watch, tones.Stop, tones.Note],
                tone =>
                    Assert.True(tone.ContrastWith(ground) >= Colour.Readable, $"{tone} on {ground}")
            );
    }

    [Fact]
    public void A_practice_without_an_accent_gets_ours() =>
        Assert.Contains(
            $"--accent: {Tones.DefaultAccent};",
            PracticeTheme.For("not a colour").CssVariables,
            StringComparison.Ordinal
        );
}
