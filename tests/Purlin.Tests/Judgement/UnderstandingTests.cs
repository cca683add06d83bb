using CsCheck;
using Purlin.Book;
using Purlin.Journal;
using Purlin.Judgement;

namespace Purlin.Tests.Judgement;

/// <summary>
/// What is plainly meant is taken, what is not is told; nothing that was given is lost without a word. Other names of things: common
/// practice.
/// </summary>
public sealed class UnderstandingTests
{
    private static readonly RuleBook Book = RuleBook.BuiltIn;
    private static readonly string[] ReadingKinds = [.. Book.ReadingKinds.Keys.Order(StringComparer.Ordinal)];
    private static readonly string[] Conditions = [.. Book.Conditions.Keys.Order(StringComparer.Ordinal)];
    private static readonly string[] Kinds = [.. Book.Sheets.Keys.Where(kind => kind != "house").Order(StringComparer.Ordinal)];
    private static readonly (string Kind, string Fact)[] Facts = [.. Book.Sheets.Values.Where(sheet =>
        sheet.Component != "house").SelectMany(sheet => sheet.Facts.Select(fact => (sheet.Component, fact.Fact))).Order()];
    private static readonly Gen<(int What, int Which, int At, int How)> Slip = Gen.Select(Gen.Int[0, 4], Gen.Int[0, 5000], Gen.Int[0, 40],
        Gen.Int[0, 3]);

    private readonly SmallHouse house = new();

    private JudgedInspection Judged => Judging.Judge(house.Build(), Book, 2026);

    [Theory]
    [InlineData("gray polybutylene", "supply-piping.polybutylene")]
    [InlineData("Polybutylene pipe", "supply-piping.polybutylene")]
    [InlineData("galvanized iron", "supply-piping.galvanised")]
    [InlineData("GALVANIZED STEEL", "supply-piping.galvanised")]
    [InlineData("lead service line", "supply-piping.lead-service")]
    public void A_material_by_another_name_is_that_material(string material, string condition)
    {
        house.Fact(house.Component("supply piping", house.Place(PlaceKind.CrawlSpace)), "material", FactValue.Of(material));
        Assert.Contains(Judged.Findings, finding => finding.Condition == condition);
        Assert.Empty(Judged.Again);
    }

    [Theory]
    [InlineData("electrical panel", "neutral wires per terminal", "2", "panelboard.neutrals-doubled")]
    [InlineData("Panelboard", "labels", "partial", "panelboard.directory-missing")]
    [InlineData("smoke detector", "year made", "about 2009", "smoke-alarm.old")]
    [InlineData("condenser", "refrigerant", "r22", "outdoor-unit.refrigerant-old")]
    [InlineData("wiring", "material", "k&t", "branch-wiring.knob-and-tube")]
    [InlineData("roof", "number of layers", "2 layers", "roof-covering.two-layers")]
    public void A_thing_and_its_fact_by_other_names_are_judged(string kind, string fact, string value, string condition)
    {
        house.Fact(house.Component(kind, house.Place(PlaceKind.Garage)), fact, FactValue.Of(value));
        Assert.Contains(Judged.Findings, finding => finding.Condition == condition);
    }

    [Theory]
    [InlineData("water pressure", "PSI")]
    [InlineData("Static Water-Pressure", "pounds per square inch")]
    [InlineData("static water presure", "psi")]
    [InlineData("static water pressure", "")]
    public void A_pressure_by_another_name_is_told(string kind, string unit)
    {
        house.Read(kind, 105, unit, house.Place(PlaceKind.Side));
        Assert.Contains(Judged.Findings, finding => finding.Condition == "supply-piping.pressure-high");
    }

    /// <summary>Whatever stands beside it: a value beyond belief, a unit of another kind, a fact that is no number.</summary>
    [Theory]
    [InlineData("residual water pressure", 9000, "psi")]
    [InlineData("residual water pressure", 60, "ft")]
    [InlineData("residual water presure xx", 60, "psi")]
    [InlineData("functional flow", -5, "gpm")]
    public void A_bad_reading_beside_the_main_one_never_takes_it_along(string kind, double value, string unit)
    {
        var side = house.Place(PlaceKind.Side);
        house.Read("static water pressure", 105, "psi", side);
        house.Read(kind, value, unit, side);
        Assert.Contains(Judged.Findings, finding => finding.Condition == "supply-piping.pressure-high");
        Assert.Contains(Judged.Again, again => again.Words.Contains($"{value}", StringComparison.Ordinal) || again.Given.Contains(kind,
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_figure_is_no_slip_of_the_pen()
    {
        house.Fact(house.Component("outdoor unit", house.Place(PlaceKind.Side)), "refrigerant", FactValue.Of("R-23"));
        Assert.Equal("R-23", Assert.Single(Judged.Again).Given);
        Assert.DoesNotContain(Judged.Findings, finding => finding.Condition == "outdoor-unit.refrigerant-old");
    }

    [Fact]
    public void What_is_left_as_it_stands_bars_no_issue_and_stays_on_record()
    {
        house.Read("wind chill", 5, "°F", house.Place(PlaceKind.Site));
        var again = Assert.Single(Judged.Again);
        Assert.Contains(Judged.Obstacles.OfType<Obstacle.NotUnderstood>(), odd => odd.Again == again.Id);
        house.Tie(again.Id, Tie.Evidence, reason: "It is of interest to nobody.");
        Assert.Equal("It is of interest to nobody.", Assert.Single(Judged.Again).Settled);
        Assert.Empty(Judged.Obstacles.OfType<Obstacle.NotUnderstood>());
    }

    [Fact]
    public void What_names_a_place_that_is_not_there_is_told()
    {
        house.Seen("siding.rot", new EntryName("k3f9", 900));
        Assert.Contains(Judged.Again, again => again is { Member: "place", Given: "k3f9.900", Bars: true });
    }

    /// <summary>A name with a slip in it is judged as the name that was meant, or told, or is another name that the book has.</summary>
    [Fact]
    public void No_misspelt_name_is_lost_without_a_word() => Slip.Sample(one =>
    {
        var meant = one.What switch
        {
            0 => ReadingKinds[one.Which % ReadingKinds.Length],
            1 => Conditions[one.Which % Conditions.Length],
            2 => Kinds[one.Which % Kinds.Length],
            3 => Facts[one.Which % Facts.Length].Fact,
            _ => PlaceKind.All[one.Which % PlaceKind.All.Count]
        };
        var given = Misspelt(meant, one.At, one.How);
        var judged = Judge(one.What, given, one.Which);
        return judged.Again.Any(again => again.Given.Contains(given, StringComparison.Ordinal)) || IsKnown(one.What, given)
            || Told(judged) == Told(Judge(one.What, meant, one.Which));
    }, iter: 400);

    /// <summary>A slip that makes the name of a thing out of that of a fact says nothing of the thing it stands on: a deck's "spa" is no spa.</summary>
    [Fact]
    public void A_fact_misspelt_into_the_name_of_a_thing_is_told()
    {
        house.Fact(house.Component("deck", house.Place(PlaceKind.Deck)), "spa", FactValue.Of(12));
        var judged = Judged;
        Assert.True(judged.Again.Any(again => again.Given.Contains("spa", StringComparison.Ordinal)), "nothing was told of it");
    }

    private static JudgedInspection Judge(int what, string name, int which)
    {
        var home = new SmallHouse();
        var place = home.Place(what == 4 ? name : PlaceKind.Garage, "There");
        switch (what)
        {
            case 0:
                var kind = Book.ReadingKinds[ReadingKinds[which % ReadingKinds.Length]];
                home.Read(name, kind.Most, kind.Unit, place);
                break;
            case 1:
                home.Seen(name, place);
                break;
            case 2:
                home.Component(name, place);
                break;
            case 3:
                home.Fact(home.Component(Facts[which % Facts.Length].Kind, place), name, FactValue.Of(1));
                break;
            default:
                home.Seen("siding.rot", place);
                break;
        }
        return Judging.Judge(home.Build(), Book, 2026);
    }

    private static string Misspelt(string word, int at, int how)
    {
        var here = at % word.Length;
        return how switch
        {
            0 => word.Remove(here, 1),
            1 => word.Insert(here, "q"),
            2 => word[..here] + 'z' + word[(here + 1)..],
            _ => word[..here] + word[here] + word[here..]
        };
    }

    private static bool IsKnown(int what, string name) => what switch
    {
        0 => ReadingKinds.Contains(name),
        1 => Conditions.Contains(name),
        2 => Book.ComponentKinds().Contains(name),
        3 => Facts.Any(fact => fact.Fact == name),
        _ => PlaceKind.All.Contains(name)
    };

    private static string Told(JudgedInspection judged) => string.Join('\n', judged.Findings.Select(finding =>
        $"{finding.Id} {finding.Title} {finding.Observed}").Concat(judged.LooseEnds.Select(end =>
            $"{end.Id} {end.Tied}")).Concat(judged.Asks.Select(ask => ask.Words)));
}
