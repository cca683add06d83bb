using System.Text.RegularExpressions;
using CsCheck;
using Purlin.Report;
using Purlin.Report.Edition;
using Purlin.Report.Page;

namespace Purlin.Tests.Report;

public sealed partial class PageTests
{
    private const string Hostile = "\"><script>alert(1)</script><img src=x onerror=alert(2)>' onload='x &lt; {{7*7}} javascript:alert(3)";

    [Fact]
    public async Task Hostile_words_in_every_field_stay_words()
    {
        var page = await PageWriter.WriteAsync(SampleReport.Paper(Hostile), SampleReport.Photo);
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", page);
        // No attribute of the page's own elements begins with "on".
        Assert.DoesNotMatch(OnAttribute(), Value().Replace(WithoutText(page), "\"\""));
    }

    [Fact]
    public async Task The_page_asks_nobody_for_anything()
    {
        var page = await PageWriter.WriteAsync(SampleReport.Paper("http://169.254.169.254/ file:///etc/passwd"), SampleReport.Photo);
        foreach (Match reference in Reference().Matches(page)) Assert.Matches("^(#|data:)", reference.Groups[1].Value);
        foreach (Match reference in StyleReference().Matches(page)) Assert.StartsWith("data:", reference.Groups[1].Value, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page);
        Assert.DoesNotContain("style=", WithoutText(page));
    }

    [Fact]
    public async Task The_policy_admits_only_the_pages_own_style()
    {
        var page = await PageWriter.WriteAsync(SampleReport.Paper(), SampleReport.Photo);
        var style = page[(page.IndexOf("<style>", StringComparison.Ordinal) + 7)..page.IndexOf("</style>", StringComparison.Ordinal)];
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(style)));
        Assert.Contains("default-src &#x27;none&#x27;", page);
        Assert.Contains($"style-src &#x27;sha256-{System.Text.Encodings.Web.HtmlEncoder.Default.Encode(hash)}&#x27;", page);
        Assert.DoesNotContain("unsafe", page);
    }

    [Fact]
    public async Task Every_matter_stands_there_with_its_six_parts()
    {
        var paper = SampleReport.Paper();
        var page = await PageWriter.WriteAsync(paper, SampleReport.Photo);
        foreach (var matter in paper.Matters)
        {
            Assert.Equal(Enum.GetValues<MatterPart>(), matter.Parts.Select(part => part.Kind));
            var card = page[page.IndexOf($"id=\"{matter.Anchor}\"", StringComparison.Ordinal)..];
            card = card[..card.IndexOf("</article>", StringComparison.Ordinal)];
            Assert.All(matter.Parts, part => Assert.Matches($"<dt>{part.Label}</dt>\\s*<dd[^>]*>(<bdi>|<p[^>]*>)*\\s*{Regex.Escape(System.Text.Encodings.Web.HtmlEncoder.Default.Encode(part.Text))}", card));
        }
        // Data of a picture is written as it is: each plus sign as six characters made a page half a megabyte longer.
        Assert.Contains("data:image/jpeg;base64," + Convert.ToBase64String(SampleReport.Jpeg), page);
    }

    [Fact]
    public async Task Headings_skip_no_level_and_every_picture_has_words()
    {
        var page = WithoutText(await PageWriter.WriteAsync(SampleReport.Paper(), SampleReport.Photo));
        var levels = Heading().Matches(page).Select(match => match.Groups[1].Value[0] - '0').ToArray();
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, level => level == 1);
        for (var index = 1; index < levels.Length; index++) Assert.True(levels[index] <= levels[index - 1] + 1, $"heading {index}: {levels[index - 1]} then {levels[index]}");
        Assert.All(Image().Matches(page), image => Assert.Matches("alt=\"[^\"]+\"", image.Value));
        Assert.Contains("<html lang=\"en-US\">", page);
        Assert.Contains("<main>", page);
    }

    [Fact]
    public async Task A_working_copy_says_so_and_an_edition_shows_the_root_of_its_record()
    {
        Assert.Contains("Working copy, not issued", await PageWriter.WriteAsync(SampleReport.Paper(), SampleReport.Photo));
        var issued = await PageWriter.WriteAsync(SampleReport.Paper(mark: SampleReport.Sealed), SampleReport.Photo);
        Assert.DoesNotContain("Working copy", issued);
        Assert.Contains("Edition 2", issued);
        Assert.Contains(Sealing.InGroups(new string('a', 64)), issued);
        Assert.Contains(Sealing.InGroups(new string('c', 64)), issued);
    }

    [Fact]
    public async Task Presumed_facts_and_missing_next_steps_are_said()
    {
        var page = await PageWriter.WriteAsync(SampleReport.Paper(), SampleReport.Photo);
        Assert.Contains("presumed, not seen", page);
        Assert.Contains("told, not checked", page);
        Assert.Contains("about 22 years old", page);
        Assert.Contains("No step has been recorded.", page);
    }

    [Fact]
    public async Task Every_link_leads_somewhere_and_every_choice_shows_what_it_counts()
    {
        foreach (var kind in Enum.GetValues<PaperKind>().Where(kind => kind != PaperKind.Second))
        {
            var paper = SampleReport.Paper(kind: kind);
            var page = await PageWriter.WriteAsync(paper, SampleReport.Photo);
            var ids = Id().Matches(page).Select(match => match.Groups[1].Value).ToHashSet();
            if (kind == PaperKind.Report) Assert.True(ids.Count > 20);
            var lost = Reference().Matches(page).Select(match => match.Groups[1].Value).Where(to => to.StartsWith('#') && to.Length > 1 && !ids.Contains(to[1..])).Distinct();
            Assert.True(!lost.Any(), $"{kind}: {string.Join(", ", lost)}");
            foreach (Match choice in Choice().Matches(page))
                Assert.Equal(int.Parse(choice.Groups[2].Value), Regex.Count(page, $"<tr role=\"row\" class=\"m [^\"]*\\b{choice.Groups[1].Value}\\b"));
        }
    }

    [Fact]
    public async Task A_mark_that_turns_letters_around_does_not_pass_into_the_page()
    {
        var page = await PageWriter.WriteAsync(SampleReport.Paper("abc \u202Efdp.exe"), SampleReport.Photo);
        Assert.Contains("<bdi>", page);
        Assert.DoesNotContain('\u202E', page);
        Assert.DoesNotContain("&#x202E;", page);
    }

    [Fact]
    public async Task Any_text_at_all_is_set_without_throwing() =>
        await Gen.String[0, 60].SampleAsync(async words => Assert.StartsWith("<!doctype html>", await PageWriter.WriteAsync(SampleReport.Paper(words), SampleReport.Photo), StringComparison.Ordinal), iter: 15, threads: 1);

    private static string WithoutText(string page) => Between().Replace(page, "><");

    [GeneratedRegex("<[^>]*\\son[a-z]+=", RegexOptions.IgnoreCase)]
    private static partial Regex OnAttribute();

    [GeneratedRegex("(?:href|src|srcset|action|data|poster)=\"([^\"]*)\"")]
    private static partial Regex Reference();

    [GeneratedRegex("url\\(\\s*[\"']?([^)]{0,20})")]
    private static partial Regex StyleReference();

    [GeneratedRegex(" id=\"([^\"]*)\"")]
    private static partial Regex Id();

    [GeneratedRegex("id=\"only-([a-z][0-9]+)\" ?/?>.{0,200}?\\(([0-9]+)\\)", RegexOptions.Singleline)]
    private static partial Regex Choice();

    [GeneratedRegex("<h([1-6])[ >]")]
    private static partial Regex Heading();

    [GeneratedRegex("<img [^>]*>")]
    private static partial Regex Image();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Value();

    [GeneratedRegex(">[^<]*<")]
    private static partial Regex Between();
}
