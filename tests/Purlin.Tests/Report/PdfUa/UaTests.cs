using Purlin.Book;
using Purlin.Report;
using Purlin.Report.Pdf;

namespace Purlin.Tests.Report.PdfUa;

/// <summary>Every paper meets every point of PDF/UA-1 that a machine can decide; a file that breaks a point is found.</summary>
public sealed class UaTests
{
    [Theory]
    [InlineData(PaperKind.Report)]
    [InlineData(PaperKind.Summary)]
    [InlineData(PaperKind.Trades)]
    [InlineData(PaperKind.Talk)]
    [InlineData(PaperKind.Walk)]
    public void The_demo_meets_every_point(PaperKind kind)
    {
        var demo = PdfTests.demo.Value.Demo;
        var work = Work.Of(demo.Entries, RuleBook.BuiltIn, 2026);
        Assert.Empty(UaCheck.Failures(PdfWriter.Bytes(work.Paper(kind, work.Copy), sha => demo.Pictures.GetValueOrDefault(sha))));
    }

    [Fact]
    public void A_small_house_of_hostile_words_meets_every_point() =>
        Assert.Empty(UaCheck.Failures(PdfWriter.Bytes(SampleReport.Paper("<b>\u202Eabc & \"quoted\" ]]> \u0000 אבג 漢字 🙂"),
            SampleReport.Photo)));

    // A check that finds nothing wrong in a wrong file checks nothing: each of these breaks one point in place.
    [Theory]
    [InlineData("/Marked true", "/Marked null", "01-007")]
    [InlineData("<pdfuaid:part>1<", "<pdfuaid:part>9<", "06-002")]
    [InlineData("/DisplayDocTitle true", "/DisplayDocTitle null", "07-001")]
    [InlineData("/S/TR", "/S/TX", "02-001")]
    [InlineData("/Scope/Row", "/Scope/Now", "15-003")]
    [InlineData("/S/H1", "/S/H3", "14-002")]
    [InlineData("/FontFile2", "/FontFilX2", "31-009")]
    [InlineData("/ToUnicode", "/ToUnicodX", "31-027")]
    [InlineData("/Tabs/S", "/Tabs/R", "28-008")]
    [InlineData("/StructParent ", "/StructParenX ", "28-002")]
    public void A_broken_point_is_found(string whole, string broken, string number)
    {
        var pdf = PdfTests.demo.Value.Pdf.ToArray();
        var (from, to) = (System.Text.Encoding.Latin1.GetBytes(whole),
            System.Text.Encoding.Latin1.GetBytes(broken[..Math.Min(broken.Length, whole.Length)].PadRight(whole.Length)));
        var changed = 0;
        for (var at = pdf.AsSpan().IndexOf(from); at >= 0; changed++)
        {
            to.CopyTo(pdf, at);
            var next = pdf.AsSpan(at + from.Length).IndexOf(from);
            at = next < 0 ? -1 : at + from.Length + next;
        }
        Assert.True(changed > 0, $"{whole} is nowhere in the file");
        Assert.Contains(UaCheck.Failures(pdf), failure => failure.Contains(number, StringComparison.Ordinal));
    }
}
