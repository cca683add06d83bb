using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Purlin.Tests.Report.PdfUa;

/// <summary>A PDF as its objects: structure elements in the order of reading, fonts, annotations, metadata.</summary>
internal sealed class UaFile : IDisposable
{
    public UaFile(byte[] bytes)
    {
        Pdf = PdfDocument.Open(bytes);
        Catalog = Pdf.Structure.Catalog.CatalogDictionary;
        if (Find(Catalog, "StructTreeRoot") is DictionaryToken root) Collect(root, null, 0);
        Metadata = Find(Catalog, "Metadata") is StreamToken stream ? System.Text.Encoding.UTF8.GetString(stream.Data.Span) : "";
    }

    public PdfDocument Pdf { get; }

    public DictionaryToken Catalog { get; }

    /// <summary>The XMP packet.</summary>
    public string Metadata { get; }

    /// <summary>Each element with the kind of the one above it.</summary>
    public List<(string Kind, string? Above, DictionaryToken Element)> Elements { get; } = [];

    public IEnumerable<DictionaryToken> Pages => Enumerable.Range(1, Pdf.NumberOfPages).Select(number => Pdf.GetPage(number).Dictionary);

    public IEnumerable<DictionaryToken> Annotations => Pages.SelectMany(page => Find(page, "Annots") is ArrayToken list
        ? list.Data.Select(Resolved).OfType<DictionaryToken>() : []);

    /// <summary>Every font of every page, each once.</summary>
    public IEnumerable<DictionaryToken> Fonts => Pages.Select(page => Find(page, "Resources")).OfType<DictionaryToken>().Select(resources =>
        Find(resources, "Font")).OfType<DictionaryToken>()
        .SelectMany(fonts => fonts.Data.Values).Select(Resolved).OfType<DictionaryToken>().DistinctBy(font => Name(font, "BaseFont"));

    public IToken? Find(DictionaryToken of, string name) => of.Data.TryGetValue(name, out var value) ? Resolved(value) : null;

    public string? Name(DictionaryToken of, string name) => (Find(of, name) as NameToken)?.Data;

    public string Text(DictionaryToken of, string name) => Find(of, name) switch
    {
        StringToken text => text.Data,
        HexToken hex => hex.Data,
        _ => ""
    };

    public void Dispose() => Pdf.Dispose();

    public IToken? Resolved(IToken? token) => token is IndirectReferenceToken reference ? Pdf.Structure.GetObject(reference.Data)?.Data
        : token;

    private void Collect(DictionaryToken element, string? above, int depth)
    {
        if (depth > 60) throw new InvalidOperationException("the structure goes round in a circle");
        var kind = Name(element, "S");
        if (kind is not null) Elements.Add((kind, above, element));
        foreach (var child in Find(element, "K") switch
        {
            ArrayToken many => many.Data,
            DictionaryToken one => [one],
            _ => (IReadOnlyList<IToken>)[]
        })
            if (Resolved(child) is DictionaryToken inner && inner.Data.ContainsKey("S")) Collect(inner, kind, depth + 1);
    }
}
