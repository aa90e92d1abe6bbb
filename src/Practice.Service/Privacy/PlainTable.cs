using System.Text;
using Practice.Service.Audit;

namespace Practice.Service.Privacy;

/// <summary>A table for other programs: CSV (RFC 4180, UTF-8), its cells harmless to a spreadsheet.</summary>
internal static class PlainTable
{
    public static byte[] Write(IEnumerable<string> head, IEnumerable<IEnumerable<string>> rows)
    {
        var table = new StringBuilder();
        foreach (var row in rows.Prepend(head))
            table.AppendJoin(',', row.Select(AuditTable.Cell)).Append("\r\n");
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(table.ToString())];
    }
}
