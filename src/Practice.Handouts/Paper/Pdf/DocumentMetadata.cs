using System.Security;
using NodaTime.Text;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Pdf;

/// <summary>The file's XMP packet, with the mark of PDF/UA-1.</summary>
internal static class DocumentMetadata
{
    public static string Of(HandoutDoc doc, Guid id)
    {
        var date = LocalDatePattern.Iso.Format(doc.Date) + "T00:00:00Z";
        return $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Text(
                doc.Title
            )}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{Text(doc.Author)}</rdf:li></rdf:Seq></dc:creator>
            <dc:language><rdf:Bag><rdf:li>{Text(doc.Language)}</rdf:li></rdf:Bag></dc:language>
            <xmp:CreateDate>{date}</xmp:CreateDate><xmp:ModifyDate>{date}</xmp:ModifyDate>
            <xmpMM:DocumentID>uuid:{id}</xmpMM:DocumentID><xmpMM:InstanceID>uuid:{id}</xmpMM:InstanceID>
            <pdfuaid:part>1</pdfuaid:part>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="w"?>
            """;
    }

    private static string Text(string text) => SecurityElement.Escape(text);
}
