using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace Practice.Domain.Tests.Handouts;

/// <summary>An element of a structure tree.</summary>
internal sealed record TagElement(
    string Type,
    DictionaryToken Data,
    IndirectReference Reference,
    IReadOnlyList<TagElement> Children,
    IReadOnlyList<(IndirectReference Page, int Id)> Contents
)
{
    public IEnumerable<TagElement> All => Children.SelectMany(c => c.All).Prepend(this);
}

/// <summary>A PDF read as a screen reader does: structure tree, parent tree, marked contents.</summary>
internal sealed class TaggedPdf
{
    private readonly PdfDocument _document;

    public TaggedPdf(byte[] file)
    {
        _document = PdfDocument.Open(file);
        Catalog = _document.Structure.Catalog.CatalogDictionary;
        Root = Dictionary(Catalog, "StructTreeRoot")!;
        Top = [.. Kids(Root).Select(k => Element(k, null))];
    }

    public DictionaryToken Catalog { get; }

    public DictionaryToken Root { get; }

    public IReadOnlyList<TagElement> Top { get; }

    public IEnumerable<TagElement> Elements => Top.SelectMany(e => e.All);

    public IEnumerable<TagElement> Of(string type) => Elements.Where(e => e.Type == type);

    /// <summary>For each page, the elements its marked contents belong to, by the parent tree.</summary>
    public IEnumerable<(IndirectReference Page, int Id, IndirectReference Element)> ParentTree()
    {
        var numbers = (ArrayToken)Resolve(
            ((DictionaryToken)Resolve(Get(Root, "ParentTree")!)).Data["Nums"]
        );
        var entries = numbers
            .Data.Chunk(2)
            .ToDictionary(p => ((NumericToken)Resolve(p[0])).Int, p => (ArrayToken)Resolve(p[1]));
        foreach (var page in Pages())
        {
            var key = ((NumericToken)Resolve(Get(Dictionary(page), "StructParents")!)).Int;
            var parents = entries[key].Data;
            for (var id = 0; id < parents.Count; id++)
                yield return (page, id, ((IndirectReferenceToken)parents[id]).Data);
        }
    }

    public IToken Resolve(IToken token) =>
        token is IndirectReferenceToken reference
            ? Resolve(_document.Structure.GetObject(reference.Data).Data)
            : token;

    public DictionaryToken? Dictionary(DictionaryToken parent, string key) =>
        Get(parent, key) is { } token ? Resolve(token) as DictionaryToken : null;

    public string? Name(DictionaryToken data, string key) =>
        Get(data, key) is { } token ? (Resolve(token) as NameToken)?.Data : null;

    public string? Text(DictionaryToken data, string key) =>
        Get(data, key) is { } token
            ? Resolve(token) switch
            {
                StringToken text => text.Data,
                HexToken hex => hex.Data,
                _ => null,
            }
            : null;

    /// <summary>An attribute of the table owner, such as <c>Scope</c>.</summary>
    public IToken? TableAttribute(TagElement element, string key)
    {
        var attributes = Get(element.Data, "A") is { } a ? Resolve(a) : null;
        var owners = attributes is ArrayToken many
            ? many.Data.Select(Resolve).OfType<DictionaryToken>()
            : [.. new[] { attributes }.OfType<DictionaryToken>()];
        return owners.Select(o => Get(o, key)).FirstOrDefault(v => v is not null);
    }

    private static IToken? Get(DictionaryToken data, string key) =>
        data.Data.GetValueOrDefault(key);

    private DictionaryToken Dictionary(IndirectReference reference) =>
        (DictionaryToken)_document.Structure.GetObject(reference).Data;

    private IEnumerable<IndirectReference> Pages() =>
        Leaves(((IndirectReferenceToken)Get(Catalog, "Pages")!).Data);

    private IEnumerable<IndirectReference> Leaves(IndirectReference node)
    {
        if (Get(Dictionary(node), "Kids") is not { } kids)
            return [node];
        return ((ArrayToken)Resolve(kids))
            .Data.Cast<IndirectReferenceToken>()
            .SelectMany(k => Leaves(k.Data));
    }

    private IEnumerable<IToken> Kids(DictionaryToken data)
    {
        if (Get(data, "K") is not { } kids)
            return [];
        return Resolve(kids) is ArrayToken array ? array.Data : [kids];
    }

    private TagElement Element(IToken token, IndirectReference? page)
    {
        var data = (DictionaryToken)Resolve(token);
        if (Get(data, "Pg") is IndirectReferenceToken own)
            page = own.Data;
        var children = new List<TagElement>();
        var contents = new List<(IndirectReference, int)>();
        foreach (var kid in Kids(data))
            switch (Resolve(kid))
            {
                case NumericToken id:
                    contents.Add((page!.Value, id.Int));
                    break;
                case DictionaryToken marked when Get(marked, "MCID") is NumericToken id:
                    contents.Add(
                        (
                            Get(marked, "Pg") is IndirectReferenceToken at ? at.Data : page!.Value,
                            id.Int
                        )
                    );
                    break;
                case DictionaryToken:
                    children.Add(Element(kid, page));
                    break;
            }
        return new(
            Name(data, "S")!,
            data,
            ((IndirectReferenceToken)token).Data,
            children,
            contents
        );
    }
}
