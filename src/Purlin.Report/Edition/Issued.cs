using Purlin.Journal;

namespace Purlin.Report.Edition;

/// <summary>Page and PDF of one issue with their hashes: what the office keeps, and what its sealing entry names.</summary>
public sealed record Issued
{
    /// <summary>The report both were made from.</summary>
    public required Paper Paper { get; init; }

    /// <summary>The page: UTF-8 without a byte order mark.</summary>
    public required ReadOnlyMemory<byte> Page { get; init; }

    /// <summary>The PDF.</summary>
    public required ReadOnlyMemory<byte> Pdf { get; init; }

    /// <summary>SHA-256 of the page.</summary>
    public string PageHash => Sha.Of(Page.Span);

    /// <summary>SHA-256 of the PDF.</summary>
    public string PdfHash => Sha.Of(Pdf.Span);

    /// <summary>Hashes of the photographs it shows, in order of appearance, each once.</summary>
    public IReadOnlyList<string> Photos => [.. Paper.Pictures.Select(picture => picture.Sha).Distinct(StringComparer.Ordinal)];
}
