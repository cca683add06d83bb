using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace Purlin.Report.Page;

/// <summary>Sets a paper as one HTML file that stands alone: pictures and fonts inside, no script, no request.</summary>
public static partial class PageWriter
{
    /// <summary>The page as it is kept: UTF-8 without a byte order mark.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the page then says.</param>
    public static async Task<byte[]> BytesAsync(Paper paper, Func<string, byte[]?> photoBySha) => Encoding.UTF8.GetBytes(await WriteAsync(paper, photoBySha));

    /// <summary>Writes the page.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="photoBySha">Bytes of a photograph by its hash; none when they are not at hand, which the page then says.</param>
    public static async Task<string> WriteAsync(Paper paper, Func<string, byte[]?> photoBySha)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(photoBySha);
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using HtmlRenderer renderer = new(services, NullLoggerFactory.Instance);
        var parameters = ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(ReportPage.Paper)] = paper, [nameof(ReportPage.Content)] = new PageContent(paper, photoBySha) });
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var page = await renderer.RenderComponentAsync<ReportPage>(parameters);
            return "<!doctype html>\n" + Settled(page.ToHtmlString());
        });
    }

    // A link into another paper leads nowhere in this one; marks that turn the order of letters around (UAX 9, section 2.2) make one read what was not recorded.
    private static string Settled(string page)
    {
        var known = Address().Matches(page).Select(match => match.Groups["id"].Value).ToHashSet(StringComparer.Ordinal);
        return Link().Replace(page, link => known.Contains(link.Groups["id"].Value) ? link.Value : "").Replace("&#x202E;", "", StringComparison.Ordinal).Replace("&#x202D;", "", StringComparison.Ordinal);
    }

    [GeneratedRegex(" id=\"(?<id>[^\"]+)\"", RegexOptions.None, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Address();

    [GeneratedRegex(" href=\"#(?<id>[^\"]+)\"", RegexOptions.None, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Link();
}
