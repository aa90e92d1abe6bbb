using Practice.Domain.Tables;
using Practice.Service.Privacy;

namespace Practice.Service.Tables;

/// <summary>A table to begin with: the columns that can be read, and a row that shows how.</summary>
public static class ImportTemplates
{
    /// <summary>As CSV, its cells harmless to a spreadsheet.</summary>
    public static byte[] Of(IReadOnlyCollection<ImportColumn> columns) =>
        PlainTable.Write(columns.Select(c => c.Name), [columns.Select(c => c.Example)]);
}
