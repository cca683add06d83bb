using Purlin.Journal;
using Purlin.Report.Edition;

namespace Purlin.Tests.Report;

public static class SealingTests
{
    [Fact]
    public static async Task An_issue_made_twice_has_the_same_hashes_and_another_edition_has_others()
    {
        var evidence = SampleReport.Evidence();
        var work = SampleReport.Worked(evidence, SampleReport.Judgement(evidence));
        var once = await work.IssueAsync(SampleReport.Sealed, SampleReport.Photo);
        var again = await work.IssueAsync(SampleReport.Sealed, SampleReport.Photo);
        Assert.Equal((once.PageHash, once.PdfHash), (again.PageHash, again.PdfHash));
        Assert.Equal((Sha.Of(once.Page.Span), Sha.Of(once.Pdf.Span)), (once.PageHash, once.PdfHash));
        var third = await work.IssueAsync(new EditionMark.Sealed(3, new string('d', 64)) { At = SampleHouse.Noon }, SampleReport.Photo);
        Assert.NotEqual(once.PageHash, third.PageHash);
        Assert.NotEqual(once.PdfHash, third.PdfHash);
        Assert.Equal([SampleReport.Sha, new string('b', 64)], once.Photos);
    }
}
