using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Screening.Rules;

// Hew-Butler 2015 Clin J Sport Med 25:303-20: low body mass, slow finishers
public class LowBloodSodiumTests
{
    [Fact]
    public void More_than_four_hours_or_less_than_sixty_kilograms_is_told_to_drink_to_thirst()
    {
        Assert.True(Warned(Screened.Outcome(client: Screened.Adult(kg: 59.9m))));
        Assert.False(Warned(Screened.Outcome(client: Screened.Adult(kg: 60))));
        Assert.True(Warned(Screened.Outcome(expectedFinish: Duration.FromMinutes(241))));
        Assert.False(Warned(Screened.Outcome(expectedFinish: Duration.FromHours(4))));
    }

    [Fact]
    public void The_words_name_the_signs_and_say_that_salt_does_not_protect()
    {
        var outcome = Screened.Outcome(client: Screened.Adult(kg: 52));

        Assert.Contains(
            "neither salt nor",
            outcome.Caution("drink-to-thirst").Text,
            StringComparison.Ordinal
        );
        var signs = outcome.Caution("overdrinking-signs").Text;
        foreach (var sign in new[] { "Headache", "vomiting", "swelling", "confusion", "stop" })
            Assert.Contains(sign, signs, StringComparison.Ordinal);
    }

    // Lipman 2017 Emerg Med J 34:637-42
    [Fact]
    public void Everybody_is_warned_of_painkillers_and_sent_to_licensed_care_first()
    {
        var outcome = Screened.Outcome();

        Assert.Equal(
            ["general-care-team-first", "general-no-diagnosis", "general-painkillers"],
            outcome.Cautions.Select(caution => caution.Key)
        );
        Assert.All(outcome.Cautions, caution => Assert.True(caution.ForClient));
        Assert.Equal("lipman-2017", outcome.Caution("general-painkillers").Source.Key);
    }

    private static bool Warned(ScreeningOutcome outcome) =>
        outcome.Cautions.Any(c => c.Key == "drink-to-thirst")
        && outcome.Cautions.Any(c => c.Key == "overdrinking-signs");
}
