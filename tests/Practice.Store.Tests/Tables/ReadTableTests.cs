using System.Text;
using Practice.Domain.Tables;
using Practice.Service.Plans;
using Practice.Service.Tables;

namespace Practice.Store.Tests.Tables;

/// <summary>A file is read as a table, whatever program wrote it, or refused with what to do.</summary>
public sealed class ReadTableTests
{
    [Theory]
    [InlineData("name,kcal\nrice,130\n")]
    [InlineData("name;kcal\r\nrice;130\r\n")]
    [InlineData("name\tkcal\nrice\t130")]
    [InlineData("\uFEFFname,kcal\nrice,130")]
    [InlineData("\"name\",\"kcal\"\n\"rice\",\"130\"\n")]
    [InlineData("name , kcal\n rice , 130 \n\n")]
    public async Task Commas_semicolons_tabs_quotes_and_byte_marks_are_all_one(string text)
    {
        var table = await Read(text);
        Assert.Equal(["name", "kcal"], table.Columns);
        var row = Assert.Single(table.Rows);
        Assert.Equal((2, "rice", "130"), (row.Number, row.Cells[0], row.Cells[1]));
    }

    [Fact]
    public async Task Quoted_cells_hold_commas_quotes_and_line_ends()
    {
        var table = await Read("name,note\n\"Rice, \"\"sticky\"\"\",\"two\nlines\"\nbread,x");
        Assert.Equal("Rice, \"sticky\"", table.Rows[0].Cells[0]);
        Assert.Equal("two\nlines", table.Rows[0].Cells[1]);
        Assert.Equal([2, 3], table.Rows.Select(r => r.Number));
    }

    [Fact]
    public async Task Rows_keep_the_number_that_a_spreadsheet_shows_and_empty_ones_are_passed_over()
    {
        var table = await Read("name,kcal\nrice,130\n,\n\nbread,250\n");
        Assert.Equal([2, 5], table.Rows.Select(r => r.Number));
    }

    [Fact]
    public async Task A_column_without_a_name_gets_one() =>
        Assert.Equal(["name", "Column 2"], (await Read("name,\nrice,130")).Columns);

    [Theory]
    [InlineData("", "no row below")]
    [InlineData("name,kcal\n", "no row below")]
    [InlineData("name\nri\0ce", "not a table of text")]
    [InlineData("PK\u0003\u0004rest", "spreadsheet's own file")]
    [InlineData("name,kcal\nrice\"x,130\n", "quotation mark")]
    public async Task What_is_no_table_is_refused_with_what_to_do(string text, string words) =>
        Assert.Contains(words, await Refused(Encoding.UTF8.GetBytes(text)), Ordinal);

    [Fact]
    public async Task Another_encoding_is_refused_rather_than_read_wrong() =>
        Assert.Contains(
            "not in UTF-8",
            await Refused(Encoding.Latin1.GetBytes("name\nBjörn\n")),
            Ordinal
        );

    [Fact]
    public async Task A_quote_that_never_closes_does_not_swallow_a_file_unseen() =>
        Assert.Contains(
            "Row 2",
            await Refused(
                Encoding.UTF8.GetBytes(
                    "name,kcal\n\"rice,130\n"
                        + string.Concat(Enumerable.Repeat("bread,250\n", 2000))
                )
            ),
            Ordinal
        );

    [Fact]
    public async Task Files_and_tables_that_are_too_large_are_refused()
    {
        Assert.Contains("5 MB", await Refused(new byte[ImportTable.LargestBytes + 1]), Ordinal);
        var rows = string.Concat(Enumerable.Repeat("x\n", ImportTable.MostRows));
        Assert.Equal(ImportTable.MostRows, (await Read($"name\n{rows}")).Rows.Length);
        Assert.Contains(
            "more than 5000 rows",
            await Refused(Encoding.UTF8.GetBytes($"name\n{rows}y\n")),
            Ordinal
        );
    }

    private static async Task<ImportTable> Read(string text) =>
        Assert.IsType<TableRead>(await Run(Encoding.UTF8.GetBytes(text))).Table;

    private static async Task<string> Refused(byte[] bytes) =>
        Assert.IsType<TableRefused>(await Run(bytes)).Reason;

    private static async Task<TableReading> Run(byte[] bytes)
    {
        using var stove = new Stove();
        using var file = new MemoryStream(bytes);
        return await new ReadTable(stove).Run(file, TestContext.Current.CancellationToken);
    }

    private const StringComparison Ordinal = StringComparison.Ordinal;
}
