using System.Text.RegularExpressions;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;

namespace Practice.Domain.Tests.Screening;

/// <summary>The page that dietitian and physician sign names every hold and caution, and nothing that is not there.</summary>
public partial class ScreeningPageTests
{
    [Fact]
    public void The_page_names_every_hold_and_caution_and_no_other()
    {
        Assert.Equal(Keys().Order(StringComparer.Ordinal), Named().Order(StringComparer.Ordinal));
    }

    private static HashSet<string> Keys()
    {
        var young = Screened.Adult(
            kg: 50,
            born: new LocalDate(2010, 1, 1),
            diet: new Diet { Allergies = [Allergen.Milk], OtherAllergy = "corn" }
        );
        var reports = Questionnaire
            .All.SelectMany(question =>
                question.Choices.Select(choice =>
                    Questionnaire
                        .NothingToReport.WithYes(Gut.IrritableBowel)
                        .WithYes(FoodAndTheBody.Coeliac)
                        .With(question, choice)
                )
            )
            .Append(Questionnaire.NothingToReport.WithWords(Medicines.Others, "creatine"))
            .Append(ScreeningAnswers.None);
        var outcomes = reports.SelectMany(answers =>
            new[] { Screened.Outcome(answers), Screened.Outcome(answers, young) }
        );
        return
        [
            ScreeningRules.ExpiredKey,
            .. outcomes.SelectMany(outcome =>
                outcome
                    .Holds.Select(hold => hold.Key.Replace(":corn", ":", StringComparison.Ordinal))
                    .Concat(outcome.Cautions.Select(caution => caution.Key))
            ),
        ];
    }

    private static HashSet<string> Named() =>
        [
            .. File.ReadLines(Path.Combine(Root(), "docs", "screening.md"))
                .Where(line => line.StartsWith('|'))
                .SelectMany(line => Key().Matches(line))
                .Select(match => match.Groups[1].Value),
        ];

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Practice.sln")))
            folder = folder.Parent;
        return folder.FullName;
    }

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Key();
}
