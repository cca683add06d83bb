using Purlin.Report.Edition;

namespace Purlin.Tests.Report;

public static class SealingTests
{
    [Fact]
    public static async Task An_issue_made_twice_has_the_same_hashes_and_another_edition_has_others()
    {
        var evidence = SampleReport.Evidence();
        var judged = SampleReport.Judgement(evidence);
        var once = await Issued.MakeAsync(evidence, judged, SampleReport.Sealed, SampleReport.Photo);
        var again = await Issued.MakeAsync(evidence, judged, SampleReport.Sealed, SampleReport.Photo);
        Assert.Equal((once.PageHash, once.PdfHash), (again.PageHash, again.PdfHash));
        var third = await Issued.MakeAsync(evidence, judged, new EditionMark.Sealed(3, new string('d', 64)) { At = SampleHouse.Noon }, SampleReport.Photo);
        Assert.NotEqual(once.PageHash, third.PageHash);
        Assert.NotEqual(once.PdfHash, third.PdfHash);
        Assert.Equal([SampleReport.Sha, new string('b', 64)], once.Photos);
    }

    [Fact]
    public static void Page_and_paper_are_hashed_as_they_are_stored()
    {
        // FIPS 180-2, appendix B.1: SHA-256 of "abc".
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Sealing.OfPage("abc"));
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Sealing.OfPdf("abc"u8));
    }
}
