using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Tables;

namespace Practice.Domain.Tests.Tables;

/// <summary>Cells are read as people write them; what is open to two readings is asked, never guessed.</summary>
public sealed class RowReaderTests
{
    private static readonly ImmutableArray<ImportColumn> Columns =
    [
        new("Value", "Value, g", true, "Of 100 g.", "1"),
        new("Kind", "Kind", false, "Of red, blue.", "red"),
    ];

    [Theory]
    [InlineData("12", 12)]
    [InlineData("12.5", 12.5)]
    [InlineData("12,5", 12.5)]
    [InlineData(" 1 234,5 ", 1234.5)]
    [InlineData("0,125", 0.125)]
    [InlineData("12.345", 12.345)]
    [InlineData("-3", -3)]
    public void A_number_is_read_with_a_point_or_a_comma(string cell, double number) =>
        Assert.Equal((decimal)number, Reader(cell).Number("Value"));

    [Theory]
    [InlineData("1,234", "thousand or a fraction")]
    [InlineData("12 g", "is not a number")]
    [InlineData("1.234,5", "is not a number")]
    [InlineData("about 3", "is not a number")]
    [InlineData("99999999999999999999999999999999", "too large")]
    public void What_is_no_number_or_two_is_told(string cell, string words)
    {
        var reader = Reader(cell);
        Assert.Null(reader.Number("Value"));
        var fault = Assert.Single(reader.Faults);
        Assert.Equal((2, "Amount"), (fault.Row, fault.Column));
        Assert.Contains(words, fault.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_decimals_have_commas_a_point_may_mark_thousands()
    {
        var reader = Reader("1.234", "0,5");
        Assert.Null(reader.Number("Value"));
        Assert.True(reader.HasErrors);
    }

    [Theory]
    [InlineData("1990-05-04")]
    [InlineData("4.5.1990")]
    [InlineData("04.05.1990")]
    [InlineData("4 May 1990")]
    public void A_day_is_read_as_people_write_it(string cell) =>
        Assert.Equal(new LocalDate(1990, 5, 4), Reader(cell).Day("Value"));

    [Theory]
    [InlineData("25/12/1990")]
    [InlineData("12/25/1990")]
    public void A_slash_is_read_where_only_one_reading_is_a_day(string cell) =>
        Assert.Equal(new LocalDate(1990, 12, 25), Reader(cell).Day("Value"));

    [Theory]
    [InlineData("4/5/1990", "which is the month")]
    [InlineData("31/31/1990", "is not a day")]
    [InlineData("1990", "is not a day")]
    [InlineData("30.2.1990", "is not a day")]
    public void What_is_no_day_or_two_is_told(string cell, string words)
    {
        var reader = Reader(cell);
        Assert.Null(reader.Day("Value"));
        Assert.Contains(words, Assert.Single(reader.Faults).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_stand_in_any_case_with_anything_between_them_and_unknown_ones_are_never_dropped()
    {
        var words = new Dictionary<string, int> { ["dark red"] = 1, ["blue"] = 2 };
        Assert.Equal([1, 2], Reader("Dark-Red; BLUE,blue").Several("Value", words));
        var reader = Reader("blue / green");
        Assert.Equal([2], reader.Several("Value", words));
        Assert.Contains("“green”", Assert.Single(reader.Faults).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_apostrophe_that_guards_against_formulas_is_no_part_of_the_text()
    {
        Assert.Equal("=1+1", Reader("'=1+1").Text("Value"));
        Assert.Equal("'s evening", Reader("'s evening").Text("Value"));
    }

    [Fact]
    public void A_row_that_is_too_short_reads_as_empty_at_its_end()
    {
        var table = new ImportTable(["Amount", "Kind"], [new ImportRow(2, ["3"])]);
        var reader = new RowReader(
            table,
            ColumnMatch.Guess(table.Columns, Columns),
            table.Rows[0],
            Columns
        );
        Assert.Null(reader.Text("Kind"));
    }

    private static RowReader Reader(string cell, string other = "")
    {
        var table = new ImportTable(["Amount", "Kind"], [new ImportRow(2, [cell, other])]);
        return new RowReader(table, new ColumnMatch(["Value", null]), table.Rows[0], Columns);
    }
}
