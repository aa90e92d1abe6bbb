using Microsoft.EntityFrameworkCore;

namespace Practice.Store.Clients;

/// <summary>
/// Words without case and accents, so that <c>zoe</c> finds Zoë and <c>soren</c> Søren. The database does it for what is
/// kept and for what is typed alike, by one function of our own: the extension that does the same is not on every server.
/// </summary>
internal static class PlainWords
{
    /// <summary>The function as migrations make it. Letters that Unicode does not take apart are named one by one.</summary>
    public const string Make = """
        create function plain_words(typed text) returns text language sql immutable strict parallel safe
        return replace(replace(replace(replace(
            translate(
                lower(regexp_replace(normalize(typed, NFD), '[\u0300-\u036F]', '', 'g')),
                'øłđðħıŧ', 'olddhit'
            ),
            'ß', 'ss'), 'æ', 'ae'), 'œ', 'oe'), 'þ', 'th');
        """;

    /// <summary>Stands for the function in queries.</summary>
    public static string Of(string typed) =>
        throw new InvalidOperationException($"'{typed}' is made plain by the database.");

    public static void Map(ModelBuilder builder) =>
        builder.HasDbFunction(typeof(PlainWords).GetMethod(nameof(Of))!).HasName("plain_words");
}
