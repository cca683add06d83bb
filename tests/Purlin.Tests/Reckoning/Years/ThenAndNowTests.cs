using Purlin.Reckoning.Years;

namespace Purlin.Tests.Reckoning.Years;

/// <summary>Rules judged by the year of the thing: before, after, and the years in between that nobody can decide from afar.</summary>
public sealed class ThenAndNowTests
{
    private static Reckoned At(string rule, int year, string more = "") => Reckoned.Of("then-and-now", $$"""{"rule":"{{rule}}","year_installed":{{year}}{{more}}}""");

    // NEC 210.8(A)(1): bathroom receptacles since the 1975 edition; adoption usually within four years (common practice).
    [Theory]
    [InlineData(1974, "no", "within")]
    [InlineData(1975, "cannot say", "cannot say")]
    [InlineData(1979, "cannot say", "cannot say")]
    [InlineData(1980, "yes", "outside")]
    public void The_edition_the_usual_lag_and_the_unknown_between(int year, string then, string verdict)
    {
        var bath = At("gfci-bathroom", year);
        Assert.Equal(then, bath.Text("required_then"));
        Assert.Equal("yes", bath.Text("required_now"));
        Assert.Equal(1975, bath.Number("first_year"));
        Assert.Equal(1979, bath.Number("usually_by"));
        Assert.Equal(verdict, bath.Verdict);
        Assert.Contains("1975", bath.Text("sentence"), StringComparison.Ordinal);
        Assert.Contains("kill", bath.Text("hazard"), StringComparison.Ordinal);
        Assert.EndsWith(bath.Text("hazard"), bath.Text("sentence"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1977, 1976, "yes")]
    [InlineData(1977, 1977, "yes")]
    [InlineData(1977, 1978, "no")]
    [InlineData(1990, 1992, "no")]
    public void The_date_of_the_place_decides_where_it_is_known(int installed, int adopted, string then)
    {
        var bath = At("gfci-bathroom", installed, $$""","year_adopted":{{adopted}}""");
        Assert.Equal(then, bath.Text("required_then"));
        Assert.Contains($"since {adopted}", bath.Text("sentence"), StringComparison.Ordinal);
    }

    // Sources differ: UPC early 1990s, IRC by 2006. The span is kept, not averaged.
    [Theory]
    [InlineData(1990, "no")]
    [InlineData(1998, "cannot say")]
    [InlineData(2010, "cannot say")]
    [InlineData(2011, "yes")]
    public void Where_sources_differ_the_whole_span_is_open(int year, string then)
    {
        var expansion = At("thermal-expansion-control", year);
        Assert.Equal(then, expansion.Text("required_then"));
        Assert.Contains("as other sources have it, 2006", expansion.Text("sentence"), StringComparison.Ordinal);
        Assert.Contains(expansion.Working.Sources, source => source.EndsWith("(sources differ)", StringComparison.Ordinal));
    }

    // Federal law needs no adoption: lead paint since 1978 (16 CFR 1303), lead solder 1986 (Safe Drinking Water Act 1417, states by 1988).
    [Theory]
    [InlineData("lead-paint", 1977, "no")]
    [InlineData("lead-paint", 1978, "cannot say")]
    [InlineData("lead-paint", 1979, "yes")]
    [InlineData("lead-solder", 1985, "no")]
    [InlineData("lead-solder", 1991, "yes")]
    // NEC 408.41 since 2002; NEC 210.8(A)(10) since 2014; IRC R315 since 2009; IRC R312.1.3 four inches 1990 to 1995.
    [InlineData("one-neutral-per-terminal", 1995, "no")]
    [InlineData("gfci-laundry", 2013, "no")]
    [InlineData("carbon-monoxide-alarm", 2020, "yes")]
    [InlineData("guard-opening-4", 1985, "no")]
    [InlineData("guard-opening-4", 2005, "yes")]
    public void Known_dates(string rule, int year, string then) => Assert.Equal(then, At(rule, year).Text("required_then"));

    // IRC 2000 R502.2.1: a deck anchored by more than nails; a bolt table since IRC 2009. BOCA 1978 guards. Rows that have not seen the editions before say nothing of them.
    [Theory]
    [InlineData("deck-ledger-not-nailed", 2005, "yes")]
    [InlineData("deck-ledger-not-nailed", 1998, "cannot say")]
    [InlineData("guard-present", 1998, "yes")]
    [InlineData("guard-present", 1985, "cannot say")]
    [InlineData("guard-height-36", 1985, "cannot say")]
    [InlineData("sediment-trap", 2003, "cannot say")]
    [InlineData("service-100-amp", 1985, "cannot say")]
    [InlineData("handrail-grip", 1996, "cannot say")]
    [InlineData("outdoor-cover-in-use", 1994, "cannot say")]
    [InlineData("outdoor-cover-in-use", 2008, "yes")]
    [InlineData("second-ground-rod", 2000, "cannot say")]
    public void Editions_that_were_not_read_are_not_said_to_have_asked_for_nothing(string rule, int year, string then)
    {
        var said = At(rule, year);
        Assert.Equal(then, said.Text("required_then"));
        if (then == "cannot say") Assert.DoesNotContain("not asked for", said.Text("sentence"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_that_notes_what_was_not_read_leaves_the_time_before_it_open() =>
        Assert.All(Eras.All.Where(era => era.FirstYear is not null && System.Text.RegularExpressions.Regex.IsMatch(era.Source, "not read|not checked|not found|from memory", System.Text.RegularExpressions.RegexOptions.None) && era.RequiredNow == "yes" && era.UsualLagYears != 0 && !Known.Contains(era.Id)), era => Assert.True(era.EarlierOpen, era.Id));

    // The year or the place of these is certain; what is from memory is another part of the note.
    private static readonly string[] Known = ["gfci-basement-unfinished", "gfci-appliances", "afci-combination", "bathroom-circuit"];

    // California Health and Safety Code 19210 to 19217; elsewhere IRC P2801.8 and UPC 507.2, by seismic design category.
    [Theory]
    [InlineData("California", "water-heater-straps-california")]
    [InlineData("Oregon", "water-heater-straps")]
    [InlineData(null, "water-heater-straps")]
    public void The_law_of_one_state_stands_for_the_rule_of_all_there_alone(string? state, string row) => Assert.Equal(row, Eras.In("water-heater-straps", state));

    // One figure, one answer: the table of guards may not call lawful what the table of eras says was asked for, nor condemn what it says was not.
    [Fact]
    public void The_table_of_guards_and_the_table_of_eras_agree()
    {
        for (var year = 1950; year <= 2025; year++)
        {
            Agree("guard-present", year, """{"drop":40,"present":false""");
            Agree("guard-height-36", year, """{"drop":40,"present":true,"height":35,"opening":3.5""");
            Agree("guard-opening-4", year, """{"drop":40,"present":true,"height":40,"opening":5""");
        }

        static void Agree(string rule, int year, string guard)
        {
            var then = At(rule, year).Text("required_then");
            var verdict = (string?)Reckoned.Of("guard", guard + $",\"year_built\":{year}}}").Working.Result["then"]!["verdict"];
            Assert.False((then == "yes" && verdict == "within") || (then == "no" && verdict == "outside"), $"{rule} {year}: {then}, guard {verdict}");
        }
    }

    // No source gives a first year for the bonding of neutral and ground at the service.
    [Fact]
    public void A_rule_without_a_known_year_cannot_be_said()
    {
        var bonding = At("main-bonding-jumper", 1950);
        Assert.Equal("cannot say", bonding.Verdict);
        Assert.True(bonding.IsNull("first_year"));
        Assert.Contains("No source gives the first year", bonding.Text("sentence"), StringComparison.Ordinal);
    }

    [Fact]
    public void Age_never_excuses_a_missing_relief_valve() =>
        Assert.Contains("Age never excuses", At("relief-valve-water-heater", 1930).Text("sentence"), StringComparison.Ordinal);

    // A material that went: polybutylene was sold until 1995 (RAND Institute for Civil Justice).
    [Fact]
    public void A_material_that_went_is_told_as_such()
    {
        Assert.Contains("In 1988 it was still in use.", At("polybutylene-ended", 1988).Text("sentence"), StringComparison.Ordinal);
        Assert.Contains("By 2005 it was no longer in use", At("polybutylene-ended", 2005).Text("sentence"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_permission_is_never_called_a_duty()
    {
        var sentence = At("gfci-ungrounded-replacement", 1970).Text("sentence");
        Assert.Contains("permitted", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("asked for when", sentence, StringComparison.Ordinal);
    }

    public static TheoryData<string> Rules() => [.. Eras.All.Select(era => era.Id)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Every_row_gives_a_sentence_in_every_age_and_never_goes_back(string rule)
    {
        string[] order = ["no", "cannot say", "yes"];
        var reached = 0;
        for (var year = 1880; year <= 2040; year += 4)
        {
            var working = At(rule, year);
            Assert.Matches(@"^[A-Z].*\.$", working.Text("sentence"));
            Assert.DoesNotContain("  ", working.Text("sentence"), StringComparison.Ordinal);
            var now = Array.IndexOf(order, working.Text("required_then"));
            Assert.True(now >= reached, $"{rule}, {year}");
            reached = now;
        }
    }

    [Fact]
    public void Years_stand_in_order() => Assert.All(Eras.All, era => Assert.True(era.FirstYear is null || era.FirstYear <= era.FirstYearLatest, era.Id));

    [Theory]
    [InlineData("""{"rule":"gfci-bath","year_installed":1990}""", "the nearest are gfci-")]
    [InlineData("""{"rule":"zzz","year_installed":1990}""", "rule: zzz; an id of the table of eras")]
    [InlineData("""{"rule":"gfci-bathroom"}""", "year_installed: missing")]
    [InlineData("""{"rule":"gfci-bathroom","year_installed":12}""", "year_installed: 12; a whole number from 1600 to 2100")]
    [InlineData("""{"rule":"gfci-bathroom","year_installed":"nineteen"}""", "year_installed")]
    [InlineData("""{"rule":7,"year_installed":1990}""", "rule")]
    public void Bad_input_names_itself(string json, string expected) => Assert.Contains(expected, Reckoned.Refused("then-and-now", json), StringComparison.Ordinal);
}
