using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace Practice.Domain.Tables;

/// <summary>
/// Reads the cells of one row as what they should be. What cannot be read is noted with row, column and what to do; it
/// reads as nothing, and nothing is guessed.
/// </summary>
public sealed partial class RowReader(
    ImportTable table,
    ColumnMatch match,
    ImportRow row,
    IReadOnlyCollection<ImportColumn> columns
)
{
    private static readonly ImmutableArray<LocalDatePattern> Days =
    [
        LocalDatePattern.CreateWithInvariantCulture("uuuu-M-d"),
        LocalDatePattern.CreateWithInvariantCulture("d.M.uuuu"),
        LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu"),
        LocalDatePattern.CreateWithInvariantCulture("d MMMM uuuu"),
    ];

    private readonly List<RowFault> faults = [];

    /// <summary>What is wrong with the row so far.</summary>
    public ImmutableArray<RowFault> Faults => [.. faults];

    /// <summary>Whether anything could not be read.</summary>
    public bool HasErrors => faults.Exists(f => !f.IsWarning);

    /// <summary>Notes a fault in a column.</summary>
    /// <param name="key">What the column is read as.</param>
    /// <param name="text">What is wrong, and what to do.</param>
    /// <param name="isWarning">Whether the row is read all the same.</param>
    public void Fault(string key, string text, bool isWarning = false) =>
        faults.Add(new RowFault(row.Number, NameOf(key), text, isWarning));

    /// <summary>Whether something is wrong in a column already.</summary>
    public bool IsFaulty(string key) => faults.Exists(f => !f.IsWarning && f.Column == NameOf(key));

    /// <summary>The text of a cell; null for an empty one, or where no column is read as that.</summary>
    public string? Text(string key)
    {
        if (match.ColumnOf(key) is not { } at || at >= row.Cells.Length)
            return null;
        var cell = row.Cells[at].Trim();
        // what an export put before a text that a spreadsheet would take for a formula
        if (cell is ['\'', '=' or '+' or '-' or '@' or '|', ..])
            cell = cell[1..];
        return cell.Length == 0 ? null : cell;
    }

    /// <summary>A text that must be there.</summary>
    public string Needed(string key)
    {
        if (Text(key) is { } text)
            return text;
        Fault(key, "Empty: this is needed.");
        return "";
    }

    /// <summary>A number, with a point or a comma before its decimals.</summary>
    public decimal? Number(string key)
    {
        if (Text(key) is not { } text)
            return null;
        var plain = text.Replace("\u00A0", "", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal);
        if (!Figures().IsMatch(plain))
            Fault(key, $"“{Short(text)}” is not a number. Write digits only, without a unit.");
        else if (IsAmbiguous(plain))
            Fault(
                key,
                $"“{Short(text)}” may be a thousand or a fraction. Write it without a mark of thousands, or with another digit."
            );
        else if (
            decimal.TryParse(
                plain.Replace(',', '.'),
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var number
            )
        )
            return number;
        else
            Fault(key, $"“{Short(text)}” is too large a number.");
        return null;
    }

    /// <summary>A day. Where a slash leaves open which is the month, nothing is guessed.</summary>
    public LocalDate? Day(string key)
    {
        if (Text(key) is not { } text)
            return null;
        foreach (var pattern in Days)
            if (pattern.Parse(text).TryGetValue(default, out var day))
                return day;
        if (
            Slashes().Match(text) is { Success: true } match
            && Between(match, 1) is var first
            && Between(match, 2) is var second
            && Between(match, 3) is var year
        )
        {
            if (first > 12 && second <= 12 && Valid(year, second, first) is { } dayFirst)
                return dayFirst;
            if (second > 12 && first <= 12 && Valid(year, first, second) is { } monthFirst)
                return monthFirst;
            if (first <= 12 && second <= 12)
            {
                Fault(
                    key,
                    $"“{text}”: which is the month? Write it as year-month-day, such as 1990-05-04."
                );
                return null;
            }
        }
        Fault(key, $"“{Short(text)}” is not a day. Write it as 1990-05-04.");
        return null;
    }

    /// <summary>One of several words; null for an empty cell.</summary>
    public T? One<T>(string key, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(words);
        return Text(key) is { } text ? Word(key, text, words) : null;
    }

    /// <summary>Several words, with commas, semicolons, slashes or bars between them; null for an empty cell.</summary>
    public ImmutableArray<T>? Several<T>(string key, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(words);
        if (Text(key) is not { } text)
            return null;
        return
        [
            .. text.Split(
                    [',', ';', '/', '|', '\n'],
                    StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
                )
                .Select(word => Word(key, word, words))
                .OfType<T>()
                .Distinct(),
        ];
    }

    private T? Word<T>(string key, string word, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (words.TryGetValue(Key(word), out var known))
            return known;
        Fault(
            key,
            $"“{Short(word)}” is not a word for this. {columns.First(c => c.Key == key).Says}"
        );
        return null;
    }

    /// <summary>A word as dictionaries of words have it: small letters, single blanks.</summary>
    public static string Key(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return string.Join(
            ' ',
            word.ToLowerInvariant()
                .Split([' ', '-', '_', '\u00A0'], StringSplitOptions.RemoveEmptyEntries)
        );
    }

    private bool IsAmbiguous(string number) =>
        Thousands().Match(number) is { Success: true } match
        && (match.Groups[1].Value == "," || table.UsesDecimalComma);

    private string NameOf(string key) =>
        match.ColumnOf(key) is { } at
            ? table.Columns[at]
            : columns.FirstOrDefault(c => c.Key == key)?.Name ?? key;

    // a cell can be as long as a page
    private static string Short(string text) => text.Length <= 40 ? text : $"{text[..39]}…";

    private static int Between(Match match, int group) =>
        int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static LocalDate? Valid(int year, int month, int day) =>
        month >= 1 && day >= 1 && year >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? new LocalDate(year, month, day)
            : null;

    [GeneratedRegex(@"^[+-]?\d+([.,]\d+)?$")]
    private static partial Regex Figures();

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}([.,])\d{3}$")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^(\d{1,2})/(\d{1,2})/(\d{4})$")]
    private static partial Regex Slashes();
}
