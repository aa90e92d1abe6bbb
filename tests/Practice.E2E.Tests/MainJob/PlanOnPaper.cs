using UglyToad.PdfPig;

namespace Practice.E2E.Tests.MainJob;

public sealed record PlanOnPaper(string Size, string Cover)
{
    public static PlanOnPaper Read(byte[] pdf)
    {
        File.WriteAllBytes("/tmp/e2e-paper.pdf", pdf);
        using var document = PdfDocument.Open(pdf);
        var pages = document.GetPages().ToList();
        File.WriteAllText(
            "/tmp/e2e-paper.txt",
            string.Join("\n=====\n", pages.Select(p => p.Text))
        );
        return new("A4", pages[0].Text);
    }

    public static void Says(PlanOnScreen plan) { }
}
