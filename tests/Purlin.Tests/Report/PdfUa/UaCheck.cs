using System.Text.RegularExpressions;
using UglyToad.PdfPig.Tokens;

namespace Purlin.Tests.Report.PdfUa;

/// <summary>
/// PDF/UA-1 (ISO 14289-1) point by point, by the numbers of the Matterhorn Protocol 1.1 (PDF Association, 2021): each failure condition
/// that a
/// machine can decide and that a file of ours could meet. What needs a person, and what cannot occur here, stands in <c>docs/pdf-ua.md</c>.
/// </summary>
internal static class UaCheck
{
    // ISO 32000-1, section 14.8.4: the standard types.
    private static readonly HashSet<string> standard =
    [
        "Document", "Part", "Art", "Sect", "Div", "BlockQuote", "Caption", "TOC", "TOCI", "Index", "NonStruct", "Private", "P", "H", "H1",
            "H2", "H3", "H4", "H5", "H6", "L", "LI", "Lbl", "LBody",
        "Table", "TR", "TH", "TD", "THead", "TBody", "TFoot", "Span", "Quote", "Note", "Reference", "BibEntry", "Code", "Link", "Annot",
            "Figure", "Formula", "Form",
    ];

    private static readonly HashSet<string> paints = ["Tj", "TJ", "'", "\"", "f", "F", "f*", "B", "B*", "b", "b*", "S", "s", "sh", "Do",
        "EI"];

    /// <summary>Failures as number and words; none for a file that meets every point a machine can decide.</summary>
    public static IReadOnlyList<string> Failures(byte[] pdf)
    {
        using UaFile file = new(pdf);
        return [.. Points(file).SelectMany(point => point.Wrong.Take(3).Select(wrong => $"{point.Number}: {wrong}"))];
    }

    /// <summary>Every point with what fails it.</summary>
    public static IEnumerable<(string Number, IEnumerable<string> Wrong)> Points(UaFile file) =>
    [
        ("01-003, 01-004, 01-005: all content is tagged or an artifact", Content(file)),
        ("01-007: the file says that it is tagged", If(file.Find(file.Catalog, "MarkInfo") is not DictionaryToken mark || file.Find(mark,
            "Marked") is not BooleanToken { Data: true }, "MarkInfo")),
        ("02-001: every type is standard", file.Elements.Where(one => !standard.Contains(one.Kind)).Select(one => one.Kind)),
        ("06-001: metadata", If(file.Metadata.Length == 0, "no metadata")),
        ("06-002: part of PDF/UA", If(!Regex.IsMatch(file.Metadata, "<pdfuaid:part>1</pdfuaid:part>", RegexOptions.None,
            TimeSpan.FromSeconds(1)), "pdfuaid:part")),
        ("06-003: title", If(!Regex.IsMatch(file.Metadata, "<dc:title><rdf:Alt><rdf:li[^>]*>[^<]+<", RegexOptions.None,
            TimeSpan.FromSeconds(1)), "dc:title")),
        ("07-001, 07-002: the title is shown", If(file.Find(file.Catalog, "ViewerPreferences") is not DictionaryToken view
            || file.Find(view, "DisplayDocTitle") is not BooleanToken { Data: true }, "DisplayDocTitle")),
        ("09-004: tables of rows of cells", Within(file, ("TR", ["Table", "THead", "TBody", "TFoot"]), ("TH", ["TR"]), ("TD", ["TR"]))),
        ("09-005: lists of items", Within(file, ("LI", ["L"]), ("Lbl", ["LI"]), ("LBody", ["LI"]))),
        ("09-006: contents of entries", Within(file, ("TOCI", ["TOC"]))),
        ("11-006: natural language", If(file.Text(file.Catalog, "Lang").Length == 0, "Lang")),
        ("13-004: figures have words", file.Elements.Where(one => one.Kind == "Figure" && file.Text(one.Element, "Alt").Length == 0
            && file.Text(one.Element, "ActualText").Length == 0).Select(_ => "Figure")),
        ("14-002, 14-003, 14-006, 14-007: headings begin at 1, skip none and are of one kind", Headings(file)),
        ("15-003: heads of tables have a scope", file.Elements.Where(one => one.Kind == "TH" && (file.Find(one.Element,
            "A") is not DictionaryToken how || file.Name(how, "Scope") is not ("Row" or "Column" or "Both"))).Select(_ => "TH")),
        ("19-003: notes have names", file.Elements.Where(one => one.Kind == "Note" && file.Text(one.Element, "ID").Length == 0).Select(_ =>
            "Note")),
        ("20-001, 21-001, 25-001, 26-001: no layers, files, forms of XFA or encryption", Absent(file)),
        ("28-002: annotations stand in the structure", file.Annotations.Where(one => file.Find(one, "StructParent") is not NumericToken)
            .Select(_ => "no StructParent")),
        ("28-004, 28-012: links have words", file.Annotations.Where(one => file.Text(one, "Contents").Length == 0).Select(_ =>
            "no Contents")),
        ("28-008, 28-009: tabs follow the structure", file.Pages.Where(page => file.Find(page, "Annots") is not null && file.Name(page,
            "Tabs") != "S").Select(_ => "a page with annotations")),
        ("28-011: links stand in Link", If(file.Annotations.Count(one => file.Name(one, "Subtype") == "Link") > file.Elements.Count(one =>
            one.Kind == "Link"), "fewer Link elements than links")),
        ("28-010, 28-014 to 28-018: no other annotations", file.Annotations.Where(one => file.Name(one, "Subtype") != "Link").Select(one =>
            file.Name(one, "Subtype") ?? "?")),
        ("30-001: no reference XObjects", If(file.Pages.Any(page => page.Data.ContainsKey("Ref")), "Ref")),
        .. Fonts(file),
    ];

    private static IEnumerable<(string, IEnumerable<string>)> Fonts(UaFile file)
    {
        DictionaryToken[] fonts = [.. file.Fonts];
        (DictionaryToken Font, DictionaryToken Inner, DictionaryToken? Described)[] inner = [.. fonts.Select(font =>
        {
            var of = file.Find(font, "DescendantFonts") is ArrayToken { Length: > 0 } list
                && file.Resolved(list.Data[0]) is DictionaryToken under ? under : font;
            return (font, of, file.Find(of, "FontDescriptor") as DictionaryToken);
        })];
        yield return ("31-001 to 31-003: character collections agree with identity encoding", inner.Where(one => file.Name(one.Font,
            "Subtype") == "Type0" && file.Name(one.Font, "Encoding") is not ("Identity-H" or "Identity-V")).Select(one =>
            file.Name(one.Font, "Encoding") ?? "no encoding"));
        yield return ("31-004, 31-005: glyphs are mapped", inner.Where(one => file.Name(one.Inner, "Subtype") == "CIDFontType2"
            && file.Find(one.Inner, "CIDToGIDMap") is not (NameToken { Data: "Identity" } or StreamToken)).Select(one =>
            file.Name(one.Font, "BaseFont") ?? "?"));
        yield return ("31-009: fonts are embedded", inner.Where(one => one.Described is not { } described
            || !(described.Data.ContainsKey("FontFile") || described.Data.ContainsKey("FontFile2")
            || described.Data.ContainsKey("FontFile3"))).Select(one => file.Name(one.Font, "BaseFont") ?? "?"));
        yield return ("31-027: letters map to Unicode", inner.Where(one => file.Find(one.Font, "ToUnicode") is not StreamToken).Select(one =>
            file.Name(one.Font, "BaseFont") ?? "?"));
        yield return ("31-028, 31-029: no letter maps to nothing", file.Pdf.GetPages().SelectMany(page => page.Letters).Where(letter =>
            letter.Value.Length == 0 || letter.Value[0] is '\0' or '\uFEFF' or '\uFFFE').Select(letter =>
            $"page letter {(letter.Value.Length == 0 ? "none" : $"U+{(int)letter.Value[0]:X4}")}"));
    }

    private static IEnumerable<string> Content(UaFile file)
    {
        foreach (var page in file.Pdf.GetPages())
        {
            var depth = 0;
            foreach (var operation in page.Operations)
            {
                if (operation.Operator is "BDC" or "BMC") depth++;
                else if (operation.Operator == "EMC") depth--;
                else if (depth <= 0 && paints.Contains(operation.Operator)) yield return $"page {page.Number}: {operation.Operator}";
            }
            if (depth != 0) yield return $"page {page.Number}: marks do not close";
        }
    }

    private static IEnumerable<string> Headings(UaFile file)
    {
        int[] levels = [.. file.Elements.Where(one => one.Kind is ['H', >= '1' and <= '6']).Select(one => one.Kind[1] - '0')];
        if (levels.Length > 0 && levels[0] != 1) yield return "the first is not 1";
        for (var at = 1; at < levels.Length; at++)
            if (levels[at] > levels[at - 1] + 1) yield return $"{levels[at - 1]}, then {levels[at]}";
        if (levels.Length > 0 && file.Elements.Exists(one => one.Kind == "H")) yield return "H beside H1";
    }

    private static IEnumerable<string> Within(UaFile file, params (string Kind, string[] Above)[] rules) =>
        from one in file.Elements
        from rule in rules
        where one.Kind == rule.Kind
            && !rule.Above.Contains(one.Above)
        select $"{one.Kind} in {one.Above ?? "nothing"}";

    private static IEnumerable<string> Absent(UaFile file) =>
        ((string[])["OCProperties", "AcroForm"]).Where(file.Catalog.Data.ContainsKey).Concat(file.Find(file.Catalog,
            "Names") is DictionaryToken names && names.Data.ContainsKey("EmbeddedFiles") ? ["EmbeddedFiles"]
            : []).Concat(file.Pdf.IsEncrypted ? ["encrypted"] : []);

    private static IEnumerable<string> If(bool wrong, string words) => wrong ? [words] : [];
}
