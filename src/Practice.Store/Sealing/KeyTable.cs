using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Npgsql;

namespace Practice.Store.Sealing;

/// <summary>
/// Where data protection finds its keys. It asks for them before the program listens, and asked through EF it would wait for
/// the whole model.
/// </summary>
/// <param name="source">Gives the database, which need not be ready when the application is put together.</param>
internal sealed class KeyTable(Func<NpgsqlDataSource> source) : IXmlRepository
{
    public IReadOnlyCollection<XElement> GetAllElements()
    {
        using var question = source()
            .CreateCommand("select xml from data_protection_key order by id");
        using var reader = question.ExecuteReader();
        var keys = new List<XElement>();
        while (reader.Read())
            keys.Add(XElement.Parse(reader.GetString(0)));
        return keys;
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        ArgumentNullException.ThrowIfNull(element);
        using var insert = source()
            .CreateCommand("insert into data_protection_key (friendly_name, xml) values ($1, $2)");
        insert.Parameters.Add(new() { Value = friendlyName });
        insert.Parameters.Add(new() { Value = element.ToString(SaveOptions.DisableFormatting) });
        insert.ExecuteNonQuery();
    }
}
