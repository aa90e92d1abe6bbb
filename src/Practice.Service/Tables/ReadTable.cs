using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Practice.Domain.Quantities;
using Practice.Domain.Tables;
using Practice.Service.Plans;

namespace Practice.Service.Tables;

/// <summary>What became of reading a file.</summary>
public abstract record TableReading;

/// <summary>It is a table.</summary>
/// <param name="Table">The table.</param>
public sealed record TableRead(ImportTable Table) : TableReading;

/// <summary>It is none that can be read.</summary>
/// <param name="Reason">Why, and what to do.</param>
public sealed record TableRefused(string Reason) : TableReading;

/// <summary>
/// Reads a file that somebody hands in as a table: CSV in UTF-8, with commas, semicolons or tabs between cells. Nothing of
/// it is kept and nothing of it is logged.
/// </summary>
public sealed class ReadTable(Stove stove)
{
    private const int MostColumns = 200;
    private const int LongestCell = 10_000;
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <param name="file">The file as it comes in.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<TableReading> Run(Stream file, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(file);
        using var whole = new MemoryStream();
        try
        {
            await file.CopyToAsync(whole, cancel);
        }
        catch (IOException)
        {
            return TooLarge;
        }
        var bytes = whole.ToArray();
        return bytes.Length > ImportTable.LargestBytes
            ? TooLarge
            : await stove.Run(() => Read(bytes));
    }

    private static TableRefused TooLarge { get; } =
        new(
            $"The file did not arrive whole, or is larger than {ImportTable.LargestBytes / 1_000_000} MB."
        );

    private static TableReading Read(byte[] bytes)
    {
        if (bytes is [(byte)'P', (byte)'K', 3, 4, ..])
            return new TableRefused(
                "This is a spreadsheet's own file. Save the sheet as CSV UTF-8 and choose that."
            );
        string text;
        try
        {
            text = Strict.GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return new TableRefused(
                "The file is not in UTF-8. In a spreadsheet, save it as “CSV UTF-8”."
            );
        }
        return text.Contains('\0', StringComparison.Ordinal)
            ? new TableRefused("This is not a table of text. Save it as CSV UTF-8.")
            : Parse(text);
    }

    private static TableReading Parse(string text)
    {
        var rows = new List<string[]>();
        using var reader = new StringReader(text);
        using var parser = new CsvParser(reader, Manner(text));
        try
        {
            while (parser.Read())
            {
                if (rows.Count > ImportTable.MostRows)
                    return new TableRefused(
                        $"The table has more than {Rounding.Shown(ImportTable.MostRows, 0)} rows. Take it in by parts."
                    );
                rows.Add(parser.Record!);
            }
        }
        catch (CsvHelperException)
        {
            // its message would quote what stands there
            return new TableRefused(
                $"Row {rows.Count + 1} cannot be read: a quotation mark in it is not closed, or a cell has more than {Rounding.Shown(LongestCell, 0)} characters."
            );
        }
        return rows is [{ } head, _, ..] && head.Any(name => name.Length > 0)
            ? Table(head, rows)
            : new TableRefused("There is no row below the names of the columns.");
    }

    private static TableReading Table(string[] head, List<string[]> rows)
    {
        if (rows.Max(r => r.Length) > MostColumns)
            return new TableRefused($"The table has more than {MostColumns} columns.");
        return new TableRead(
            new ImportTable(
                [.. head.Select((name, i) => name.Length > 0 ? name : $"Column {i + 1}")],
                [
                    .. rows.Index()
                        .Skip(1)
                        .Where(r => r.Item.Any(cell => cell.Length > 0))
                        .Select(r => new ImportRow(r.Index + 1, [.. r.Item])),
                ]
            )
        );
    }

    private static CsvConfiguration Manner(string text) =>
        new(CultureInfo.InvariantCulture)
        {
            Delimiter = Between(text).ToString(),
            TrimOptions = TrimOptions.Trim,
            IgnoreBlankLines = false,
            MaxFieldSize = LongestCell,
        };

    /// <summary>What stands between the cells: of comma, semicolon and tab the one that the first row has most of.</summary>
    private static char Between(string text)
    {
        var counts = new Dictionary<char, int>
        {
            [','] = 0,
            [';'] = 0,
            ['\t'] = 0,
        };
        var isQuoted = false;
        foreach (var letter in text)
        {
            if (letter == '"')
                isQuoted = !isQuoted;
            else if (letter is '\n' or '\r' && !isQuoted)
                break;
            else if (!isQuoted && counts.TryGetValue(letter, out var count))
                counts[letter] = count + 1;
        }
        return counts.MaxBy(c => c.Value).Key;
    }
}
