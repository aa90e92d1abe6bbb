using System.Globalization;
using Practice.Domain.Evidence;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

public class TargetWordsTests
{
    [Theory]
    [InlineData(700.0, 630.0, 770.0, "g/day", 0, "700 g/day", "630–770 g/day")]
    [InlineData(9.96, 8.0, 12.0, "g/kg/day", 1, "10.0 g/kg/day", "8.0–12.0 g/kg/day")]
    [InlineData(null, null, 15.0, "g/day", 0, "at most 15 g/day", "at most 15 g/day")]
    [InlineData(null, 58.1, null, "g/day", 0, "at least 58 g/day", "at least 58 g/day")]
    [InlineData(195.0, 187.6, 204.2, "min", 0, "3:15 h", "3:08 h–3:24 h")]
    [InlineData(0.0, 0.0, 0.0, "%", 0, "0 %", "0 %")]
    [InlineData(null, null, null, "L/day", 1, "none set", "none set")]
    public void A_target_reads_as_a_person_would_write_it(
        double? aim,
        double? low,
        double? high,
        string unit,
        int decimals,
        string aimWords,
        string bandWords
    )
    {
        var target = new Target
        {
            Key = "any",
            Name = "Any",
            Aim = (decimal?)aim,
            Low = (decimal?)low,
            High = (decimal?)high,
            Unit = unit,
            Decimals = decimals,
            Basis = new Basis("", [], []),
        };
        Assert.Equal(aimWords, TargetWords.Aim(target));
        Assert.Equal(bandWords, TargetWords.Band(target));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("fa-IR")]
    public void Words_are_the_same_in_every_culture(string culture)
    {
        var invariant = Words();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(invariant, Words());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static List<string> Words() =>
        Athlete
            .LightWoman.Targets()
            .All.SelectMany(t =>
                t.Basis.Inputs.Select(i => i.Value)
                    .Append(TargetWords.Aim(t))
                    .Append(TargetWords.Band(t))
            )
            .ToList();
}
