using System.Globalization;
using Microsoft.Extensions.Primitives;

namespace Practice.Web.Features.Portal.Answers;

/// <summary>
/// What stands in the fields of a rehearsal's page, as typed, and what is wrong with it. Nothing typed is lost when
/// something is refused: the page is shown again from here.
/// </summary>
public sealed class PageAnswers
{
    /// <summary>The longest text taken in.</summary>
    public const int LongestText = 2000;

    private readonly Dictionary<string, string> _typed = [];
    private readonly Dictionary<string, string> _refusals = [];

    /// <summary>What is typed in a field; empty for nothing.</summary>
    public string this[string field]
    {
        get => _typed.GetValueOrDefault(field, "");
        set => _typed[field] = value;
    }

    /// <summary>What is wrong, by field, in the client's words.</summary>
    public IReadOnlyDictionary<string, string> Refusals => _refusals;

    public static PageAnswers Of(IEnumerable<KeyValuePair<string, StringValues>> form)
    {
        var answers = new PageAnswers();
        foreach (var (field, typed) in form)
            answers[field] = typed.ToString().Trim();
        return answers;
    }

    public bool Is(string field, string value) => this[field] == value;

    /// <summary>Whether a box is ticked.</summary>
    public bool Ticked(string field) => this[field] == "yes";

    public void Tick(string field, bool isTicked)
    {
        if (isTicked)
            this[field] = "yes";
    }

    public void Refuse(string field, string words) => _refusals[field] = words;

    /// <summary>A number typed with point or comma; null for none, and for one refused.</summary>
    public decimal? Number(string field, decimal low, decimal high)
    {
        if (this[field].Length == 0)
            return null;
        if (
            decimal.TryParse(
                this[field].Replace(',', '.'),
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out var number
            )
            && number >= low
            && number <= high
        )
            return number;
        Refuse(field, $"Type a number from {Plain(low)} to {Plain(high)}, or leave it empty.");
        return null;
    }

    public void Number(string field, decimal? number)
    {
        if (number is { } known)
            this[field] = Plain(known);
    }

    /// <summary>A text; refused when it is too long to be kept whole.</summary>
    public string Text(string field)
    {
        if (this[field].Length > LongestText)
            Refuse(
                field,
                "That is too long. Shorten it a little, or send the rest in a second note."
            );
        return this[field];
    }

    /// <summary>Four decimals are more than any amount needs.</summary>
    public static string Plain(decimal number) =>
        number.ToString("0.####", CultureInfo.InvariantCulture);
}
