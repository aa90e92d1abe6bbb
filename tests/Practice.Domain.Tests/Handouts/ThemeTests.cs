using CsCheck;
using Practice.Domain.Practices;
using Practice.Handouts.Paper;

namespace Practice.Domain.Tests.Handouts;

public sealed class ThemeTests
{
    [Fact]
    public void Text_can_be_read_on_every_surface_whatever_the_accent() =>
        Gen.Int[0, 0xFFFFFF]
            .Sample(rgb =>
            {
                var theme = Theme.Of($"#{rgb:X6}");
                Assert.All(
                    theme.Pairs,
                    pair => Assert.True(pair.Text.ContrastWith(pair.Surface) >= Theme.Readable)
                );
                Assert.True(theme.AccentShape.ContrastWith(theme.Sheet) >= Theme.Visible);
            });

    [Theory]
    [InlineData("#000000", "#FFFFFF", 21)]
    [InlineData("#FFFFFF", "#FFFFFF", 1)]
    [InlineData("#777777", "#FFFFFF", 4.48)]
    public void Contrast_is_as_published(string one, string other, double ratio) =>
        Assert.Equal(ratio, Colour.Parse(one).ContrastWith(Colour.Parse(other)), 0.005);
}
