using System.Net;
using Practice.Service.Mail;

namespace Practice.Store.Tests.Mail;

public class LetterPaperTests
{
    private static readonly LetterContent Letter = new(
        "Larch House: your pages",
        ["Zoë, this is <your> link.", "Keep it to yourself & well."],
        new LetterLink("Open my pages", "https://practice.example/p/abc?x=1&y=2"),
        "Larch House · 1 Lane"
    )
    {
        Head = "Larch House",
        By = "Robin O'Brien",
        Accent = "#FFD400",
    };

    [Fact]
    public void Both_forms_say_every_word_of_the_letter()
    {
        string[] words =
        [
            .. Letter.Paragraphs,
            Letter.Link!.Words,
            Letter.Link.Address,
            Letter.By,
            Letter.Foot,
        ];
        var html = LetterPaper.Html(Letter);
        Assert.All(
            words,
            said =>
            {
                Assert.Contains(said, LetterPaper.Plain(Letter), StringComparison.Ordinal);
                Assert.Contains(WebUtility.HtmlEncode(said), html, StringComparison.Ordinal);
            }
        );
        Assert.DoesNotContain("<your>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_button_bears_the_practices_accent_and_can_be_read_on_it() =>
        Assert.Contains(
            "background:#FFD400;color:#000000",
            LetterPaper.Html(Letter),
            StringComparison.Ordinal
        );
}
