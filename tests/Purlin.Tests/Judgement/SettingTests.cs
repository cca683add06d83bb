using Purlin.Journal;
using Purlin.Judgement;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>What the standards set differently reaches the rule that counts it, or is shown where the inspector decides.</summary>
public sealed class SettingTests
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private readonly SmallHouse house = new();

    private JudgedInspection Judged => Judging.Judge(house.Build(), Book, 2026);

    [Fact]
    public void Every_setting_of_a_standard_is_used_somewhere()
    {
        List<string> idle = [];
        foreach (var standard in Book.Standards.Values)
            foreach (var (id, setting) in standard.Settings)
                if (!Book.Settings.TryGetValue(id, out var rule) || !IsUsed(rule, setting)) idle.Add($"{standard.Id}: {id}");
        Assert.Empty(idle);
        Assert.Empty(Book.Settings.Keys.Where(id => Book.Standards.Values.All(standard => !standard.Settings.ContainsKey(id))));
    }

    private static bool IsUsed(SettingRule rule, Setting setting) => rule.Use switch
    {
        SettingUse.Limit => Book.Limitations.Values.Any(limitation => limitation.When?.Setting == rule.Id && (limitation.When.Reading is not null ? IsNumber(setting) : limitation.When.Sizes.Values.Any(setting.Sizes.ContainsKey))),
        SettingUse.Date => IsNumber(setting) && setting.From.Length > 0 && Book.Visit.Any(visit => visit.Date?.Setting == rule.Id || visit.Facts.Any(fact => fact.Within == rule.Id)),
        SettingUse.Sample => setting.Sizes.ContainsKey("room") || setting.Sizes.ContainsKey("side"),
        SettingUse.Shown => rule.Places.Count > 0 || rule.Components.Count > 0,
        _ => false,
    };

    private static bool IsNumber(Setting setting) => double.TryParse(setting.Value, System.Globalization.CultureInfo.InvariantCulture, out _);

    [Fact]
    public void Every_place_and_component_at_which_a_setting_is_shown_is_known()
    {
        var kinds = Book.ComponentKinds();
        Assert.Empty(Book.Settings.Values.SelectMany(rule => rule.Components.Where(kind => !kinds.Contains(kind)).Concat(rule.Places.Where(kind => !PlaceKind.All.Contains(kind)))));
    }

    [Fact]
    public void Every_reading_that_a_size_is_held_against_is_known_with_a_length()
    {
        var readings = Book.Limitations.Values.Where(limitation => limitation.When is not null).SelectMany(limitation => limitation.When!.Sizes.Keys).ToList();
        Assert.Equal(6, readings.Count);
        Assert.All(readings, reading => Assert.Equal("in", Book.ReadingKinds[reading].Unit));
    }

    // WAC 308-408C-110 and ASHI 7 look inside the panel; InterNACHI 3.7 does not ask for its cover to come off.
    [Fact]
    public void The_cover_of_the_panel_is_told_standard_by_standard()
    {
        house.Standards = ["washington", "internachi"];
        var cover = Judged.Wanted.Where(wanted => wanted.Setting == "panel cover").ToList();
        Assert.Equal([("InterNACHI", "need not be taken off"), ("Washington", "taken off to look inside")], cover.Select(wanted => (wanted.Standard, wanted.Value)));
        Assert.All(cover, wanted => Assert.Equal(["panelboard"], wanted.Components));
    }

    // 22 TAC 535.228(c): the attic is entered from an opening of 22 by 30 inches and 30 inches of headroom (from memory).
    [Theory]
    [InlineData("attic opening, longer side", 29, true)]
    [InlineData("attic opening, longer side", 30, false)]
    [InlineData("attic opening, shorter side", 21, true)]
    [InlineData("attic headroom", 29.9, true)]
    [InlineData("attic headroom", 30, false)]
    public void An_attic_too_tight_to_enter_offers_the_limitation(string reading, double inches, bool offered)
    {
        house.Standards = ["texas"];
        house.Read(reading, inches, "in", house.Place(PlaceKind.Attic));
        var offer = Judged.Offers.SingleOrDefault(one => one.Rule == "attic-from-hatch");
        Assert.Equal(offered, offer is not null);
        if (offered) Assert.Contains("Texas asks to enter from", offer!.Cause);
    }

    [Fact]
    public void Feet_are_inches_too()
    {
        house.Standards = ["texas"];
        house.Read("crawl space headroom", 1.4, "ft", house.Place(PlaceKind.CrawlSpace));
        Assert.Contains(Judged.Offers, one => one.Rule == "crawl-not-entered");
    }

    [Fact]
    public void Where_no_standard_sets_a_size_nothing_is_offered()
    {
        house.Standards = ["florida"];
        house.Read("crawl space headroom", 6, "in", house.Place(PlaceKind.CrawlSpace));
        Assert.DoesNotContain(Judged.Offers, one => one.Rule == "crawl-not-entered");
    }

    // Rule 61-30.101: representative number, one for each room inside and one for each side outside.
    [Fact]
    public void A_sample_of_one_in_each_room_says_where_none_was_tried()
    {
        house.Standards = ["florida", "washington"];
        var bedroom = house.Place(PlaceKind.Bedroom, "Back bedroom");
        var kitchen = house.Place(PlaceKind.Kitchen, "Kitchen");
        house.Place(PlaceKind.Garage, "Garage");
        house.Clear("window.wont-open", bedroom, sample: new Sample(1, 3, 0));
        house.Clear("interior-door.sticks", bedroom);
        house.Clear("interior-door.sticks", kitchen);
        house.Clear("exterior-door.wont-latch", kitchen);
        var windows = Judged.Coverage.Single(coverage => coverage.Standard == "florida").Duties.Single(duty => duty.Section == "61-30.807(1)(e)");
        Assert.Equal(DutyStanding.Met, windows.State);
        Assert.Equal(["Kitchen"], windows.Fewer);
        Assert.Contains("Windows operated: the sample is one in each room, and none was tried in: Kitchen.", windows.Words);
        Assert.All(Judged.Coverage.Single(coverage => coverage.Standard == "washington").Duties, duty => Assert.Empty(duty.Fewer));
    }

    [Fact]
    public void A_sample_of_one_on_each_side_is_counted_side_by_side()
    {
        house.Standards = ["florida"];
        var north = house.Place(PlaceKind.Side, "North side");
        house.Place(PlaceKind.Side, "South side");
        house.Clear("exterior-door.wont-latch", north);
        house.Clear("exterior-door.weatherstrip", north);
        var duty = Judged.Coverage.Single().Duties.FirstOrDefault(one => one.Words.Contains("none was tried on: South side", StringComparison.Ordinal));
        Assert.NotNull(duty);
        Assert.Equal(["South side"], duty.Fewer.Distinct());
    }
}
