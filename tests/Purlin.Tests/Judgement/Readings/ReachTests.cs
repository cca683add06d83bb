using Purlin.Judgement;
using Purlin.Book;
using Purlin.Reckoning;

namespace Purlin.Tests.Judgement.Readings;

/// <summary>
/// Every reckoning is called from evidence by itself. The worked cases are the proof: each reckoning must give a working in one of them, raise
/// there what it can raise, and in another raise nothing.
/// </summary>
public sealed class ReachTests
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;

    /// <summary>Reckonings that no ordinary visit can feed, with the reason; docs/judgement.md says the same.</summary>
    private static readonly Dictionary<string, string> ByHand = [];

    /// <summary>Called while findings are written, for each that has a year, and not from a feed.</summary>
    private const string OfFindings = "then-and-now";

    private static readonly IReadOnlyList<JudgedInspection> Judged = [.. WorkedCases.Files().Select(WorkedCases.Judge)];

    public static TheoryData<string> Reckoned => [.. Reckonings.All.Select(reckoning => reckoning.Name)];

    public static TheoryData<string> Raising => [.. Book.Feeds.Where(feed => feed.Raises.Count > 0).Select(feed => feed.Id)];

    [Theory]
    [MemberData(nameof(Reckoned))]
    public void Evidence_alone_gives_a_working(string name)
    {
        if (ByHand.TryGetValue(name, out var reason)) { Assert.NotEmpty(reason); return; }
        if (name == OfFindings) { Assert.True(Judged.Any(judged => judged.Findings.Any(finding => finding.ThenAndNow is not null)), "no finding carries then and now"); return; }
        Assert.Contains(Book.Feeds, feed => feed.Reckoning == name);
        var working = Judged.SelectMany(judged => judged.Workings).FirstOrDefault(done => done.Working.Name == name);
        Assert.True(working is not null, $"{name} is called in no worked case");
        Assert.NotEmpty(working.Evidence);
        Assert.NotEmpty(working.Working.Steps);
        Assert.NotEmpty(working.Working.Sources);
    }

    [Theory]
    [MemberData(nameof(Raising))]
    public void What_a_feed_can_raise_is_raised(string id)
    {
        var feed = Book.Feeds.Single(feed => feed.Id == id);
        var missing = feed.Raises.Where(raise => !Judged.Any(judged => judged.Findings.Any(finding => Speaks(finding, raise.Condition) && Of(judged, feed).Any(done => done.Evidence.Intersect(finding.Evidence).Any()))));
        Assert.Equal("", string.Join(", ", missing.Select(raise => raise.Condition)));
    }

    [Theory]
    [MemberData(nameof(Raising))]
    public void And_what_is_within_raises_nothing(string id)
    {
        var feed = Book.Feeds.Single(feed => feed.Id == id);
        Assert.True(Judged.Any(judged => Of(judged, feed).Any() && !feed.Raises.Any(raise => judged.Findings.Any(finding => Speaks(finding, raise.Condition)))), $"{id} raises something in every case");
    }

    /// <summary>Numbers and facts that raise by themselves: the panel's neutrals and directory, a window too small to climb through.</summary>
    [Fact]
    public void Every_number_and_fact_that_raises_by_itself_is_raised_in_some_case()
    {
        var raised = Judged.SelectMany(judged => judged.Findings).SelectMany(finding => finding.Grouped.Append(finding.Condition)).ToHashSet(StringComparer.Ordinal);
        var missing = Book.ReadingKinds.Values.SelectMany(kind => kind.Raises.Select(raise => $"{kind.Kind}: {raise.Condition}"))
            .Concat(Book.FactRules.Select(rule => $"{rule.Component}/{rule.Fact}: {rule.Raise.Condition}")).Where(line => !raised.Contains(line.Split(": ")[1])).ToList();
        Assert.True(missing.Count == 0, string.Join('\n', missing));
    }

    private static bool Speaks(Finding finding, string condition) => finding.Condition == condition || finding.Grouped.Contains(condition);

    private static IEnumerable<JudgedWorking> Of(JudgedInspection judged, Feed feed) =>
        judged.Workings.Where(done => done.Working.Name == feed.Reckoning && feed.Inputs.Keys.Where(name => Feeds(feed, name)).All(done.Working.Inputs.ContainsKey));

    /// <summary>Inputs by which a feed is told from another one of the same reckoning.</summary>
    private static bool Feeds(Feed feed, string name) => !feed.Inputs[name].Optional && feed.Inputs[name].With is null;
}
