using CsCheck;
using Purlin.Reckoning;

namespace Purlin.Tests.Reckoning.Electrical;

public sealed class ServiceLoadTests
{
    private static Working Load(string json) => Worked.Of("service-load", json);

    // NEC Annex D, example D1(a) (the 2005 edition as printed; the figures were the same before and after): 18,600 VA, 78 A,
    // neutral 14,550 VA, 61 A, service not less than 100 A.
    [Theory]
    [InlineData(2014)]
    [InlineData(2017)]
    [InlineData(2020)]
    [InlineData(2023)]
    public void Annex_D1a_house_by_the_standard_method(int edition)
    {
        var working = Load($$"""{"method": "standard", "edition": {{edition}}, "floor_area": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [12], "dryers": [5500]}""");
        Worked.Near(18_600, working.Value("total", "VA"), 1e-6);
        Worked.Near(5_100, working.Value("lighting", "VA"), 1e-6);
        Worked.Near(78, working.Value("amps", "A"), 0.5);
        Worked.Near(14_550, working.Value("neutral", "VA"), 1e-6);
        Worked.Near(61, working.Value("neutral_amps", "A"), 0.5);
        Worked.Near(100, working.Value("minimum_service", "A"), 0);
        Worked.Near(80, working.Value("next_standard_rating", "A"), 0);
    }

    private const string D1b = """
        {"method": "standard", "edition": 2023, "floor_area": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [12], "dryers": [5500],
         "fixed_appliances": [
           {"name": "room air conditioner", "VA": 1380, "volts": 230, "motor": true, "comfort": true},
           {"name": "room air conditioner", "VA": 1380, "volts": 115, "motor": true, "comfort": true, "line": "A"},
           {"name": "disposer", "VA": 920, "volts": 115, "motor": true, "line": "B"},
           {"name": "dishwasher", "VA": 1200, "volts": 120, "line": "B"}]}
        """;

    // NEC Annex D, example D1(b): lines 99 and 104 A, service 110 A. The book adds whole amperes line by line; so does the tolerance.
    [Fact]
    public void Annex_D1b_house_line_by_line()
    {
        var working = Load(D1b);
        Worked.Near(99, working.Value("line_a", "A"), 0.6);
        Worked.Near(104, working.Value("line_b", "A"), 0.6);
        Worked.Near(110, working.Value("minimum_service", "A"), 0);
    }

    // The neutral of D1(b) has been printed as 84 A (2002) and 83 A (2005 pocket guide), an edition's misprint
    // (forums.mikeholt.com, thread 15301); neither is worked out from 220.61, and neither is what comes out here.
    [Fact]
    public void Annex_D1b_neutral_is_neither_of_the_two_printed_figures()
    {
        var neutral = Load(D1b).Value("neutral_amps", "A");
        Assert.InRange(neutral, 80, 82.5);
        Assert.True(Math.Abs(neutral - 83) > 0.5 && Math.Abs(neutral - 84) > 0.5, $"{neutral}");
    }

    // NEC Annex D, example D2(a): 29,700 VA in the pool, 17,880 after demand, heat 3,600, total 21,480 VA, 90 A; neutral 15,400 VA.
    [Fact]
    public void Annex_D2a_house_with_separate_heaters()
    {
        var working = Load("""
            {"method": "optional", "edition": 2020, "floor_area": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [12], "dryers": [5000],
             "fixed_appliances": [{"name": "water heater", "VA": 2500, "volts": 240}, {"name": "dishwasher", "VA": 1200, "volts": 120}],
             "cooling": 1380, "heating": 9000, "heating_kind": "separate", "heating_units": 5, "volts": 240}
            """);
        Assert.Contains(working.Steps, step => step.Value is 29_700);
        Worked.Near(17_880, working.Value("general", "VA"), 1e-6);
        Worked.Near(3_600, working.Value("heating_or_cooling", "VA"), 1e-6);
        Worked.Near(21_480, working.Value("total", "VA"), 1e-6);
        Worked.Near(90, working.Value("amps", "A"), 0.51);
        Worked.Near(15_400, working.Value("neutral", "VA"), 1e-6);
        Worked.Near(100, working.Value("minimum_service", "A"), 0);
    }

    // NEC Annex D, example D2(b): 32,800 VA, 19,120 after demand, cooling 10,080, total 29,200 VA, 122 A; the neutral's cooking
    // 13.1 kW × 55 % (printed 7,200, exactly 7,205) × 70 %; its sum 14,840 VA worked out from the printed parts.
    [Fact]
    public void Annex_D2b_house_with_room_coolers()
    {
        var working = Load("""
            {"method": "optional", "edition": 2017, "floor_area": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [4, 4, 5.1], "dryers": [5000],
             "fixed_appliances": [{"name": "water heater", "VA": 4500, "volts": 240}, {"name": "dishwasher", "VA": 1200, "volts": 120}],
             "cooling": 10080, "heating": 1500, "heating_kind": "separate", "heating_units": 1}
            """);
        Assert.Contains(working.Steps, step => step.Value is { } value && Math.Abs(value - 32_800) < 1e-6);
        Worked.Near(29_200, working.Value("total", "VA"), 1e-6);
        Worked.Near(122, working.Value("amps", "A"), 0.5);
        Worked.Near(14_840, working.Value("neutral", "VA"), 5);
    }

    // NEC Annex D, example D2(c): 33,200 VA, 19,280 after demand, 5,760 + 65 % of 15,000, total 34,790 VA, 145 A, 150 A service.
    [Fact]
    public void Annex_D2c_house_with_a_heat_pump()
    {
        var working = Load(D2c(2014, ""));
        Worked.Near(19_280, working.Value("general", "VA"), 1e-6);
        Worked.Near(34_790, working.Value("total", "VA"), 1e-6);
        Worked.Near(145, working.Value("amps", "A"), 0.5);
        Worked.Near(150, working.Value("minimum_service", "A"), 0);
    }

    // The same house with strips that lock the compressor out: 29,030 VA by 220.82(C)(3).
    [Fact]
    public void Supplement_that_locks_out_is_not_added() =>
        Worked.Near(29_030, Load(D2c(2023, ", \"supplement_locks_out\": true")).Value("total", "VA"), 1e-6);

    private static string D2c(int edition, string more) => $$"""
        {"method": "optional", "edition": {{edition}}, "floor_area": 2000, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [12], "dryers": [5000],
         "fixed_appliances": [{"name": "water heater", "VA": 4500}, {"name": "dishwasher", "VA": 1200}],
         "heating": 5760, "heating_kind": "heat pump", "supplement": 15000{{more}} }
        """;

    // NEC Annex D, example D6: 24 ranges of 16 kW are 46.8 kW; 5 of 11, 2 of 12, 20 of 13.5 and 3 of 18 kW are 49.5 kW.
    // One 14 kW range is 8.8 kW and ten are 27.5 kW (trade quizzes on Table 220.55 note 1).
    [Theory]
    [InlineData("24x16", 46.8)]
    [InlineData("5x11 2x12 20x13.5 3x18", 49.5)]
    [InlineData("1x14", 8.8)]
    [InlineData("10x14", 27.5)]
    [InlineData("1x12", 8)]
    [InlineData("2x12", 11)]
    [InlineData("3x12", 14)]
    public void Cooking_demand(string ranges, double kilowatts)
    {
        var each = ranges.Split(' ').SelectMany(part => Enumerable.Repeat(part.Split('x')[1], int.Parse(part.Split('x')[0], System.Globalization.CultureInfo.InvariantCulture)));
        var working = Load($$"""{"method": "standard", "edition": 2023, "floor_area": 1500, "ranges": [{{string.Join(',', each)}}]}""");
        Worked.Near(1000 * kilowatts, working.Value("cooking", "VA"), 1e-6);
    }

    // One published house by both methods (a contractor's page on 220.82): 167 A standard, 121 A optional.
    [Theory]
    [InlineData("standard", 40_185, 167)]
    [InlineData("optional", 29_080, 121)]
    public void One_house_by_both_methods(string method, double total, double amps)
    {
        var working = Load($$"""
            {"method": "{{method}}", "edition": 2023, "floor_area": 2000, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [12], "dryers": [5500],
             "fixed_appliances": [{"name": "water heater", "VA": 4500}, {"name": "dishwasher", "VA": 1200}],
             "vehicle_charger": 9600, "heating": 5760, "heating_kind": "heat pump"}
            """);
        Worked.Near(total, working.Value("total", "VA"), 1e-6);
        Worked.Near(amps, working.Value("amps", "A"), 0.5);
    }

    // A training school's example of the 2014 optional method: 36,400 VA, 20,560; central heat 9,750 beats cooling 6,960; 30,310 VA, 126 A.
    [Fact]
    public void Optional_method_with_central_heat()
    {
        var working = Load("""
            {"method": "optional", "edition": 2014, "floor_area": 2800, "small_appliance_circuits": 2, "laundry_circuits": 1, "ranges": [14], "dryers": [5000],
             "fixed_appliances": [{"name": "water heater", "VA": 3000}, {"name": "dishwasher", "VA": 1500}],
             "cooling": 6960, "heating": 15000, "heating_kind": "central"}
            """);
        Worked.Near(30_310, working.Value("total", "VA"), 1e-6);
        Worked.Near(126, working.Value("amps", "A"), 0.5);
    }

    // Published examples of the standard method: an electrician's page (46,575 VA, 194 A, 200 A service); a trade forum (32,650 VA);
    // another (19,125 VA, neutral 15,075 VA); an ordinance at 230 V (13,100 VA); a permit page that keeps column C for one 8 kW range (29,125 VA).
    [Theory]
    [InlineData("""{"method": "standard", "edition": 2017, "floor_area": 3000, "ranges": [12], "dryers": [4500], "heating": 20000, "heating_kind": "central", "cooling": 9000, "fixed_appliances": [{"name": "water heater", "VA": 5000}, {"name": "dishwasher", "VA": 1000}, {"name": "disposer", "VA": 900}]}""", 46_575)]
    [InlineData("""{"method": "standard", "edition": 2017, "floor_area": 2500, "ranges": [11], "dryers": [4500], "heating": 10000, "heating_kind": "central", "fixed_appliances": [{"name": "disposer", "VA": 800, "motor": true}, {"name": "water heater", "VA": 2500}]}""", 32_650)]
    [InlineData("""{"method": "standard", "edition": 2017, "floor_area": 2000, "ranges": [12], "dryers": [5500]}""", 19_125)]
    [InlineData("""{"method": "standard", "edition": 2017, "floor_area": 1500, "ranges": [12], "volts": 230}""", 13_100)]
    [InlineData("""{"method": "standard", "edition": 2017, "floor_area": 2000, "ranges": [8], "cooking_columns": "column C", "dryers": [5000], "cooling": 6000, "fixed_appliances": [{"name": "water heater", "VA": 4500}]}""", 29_125)]
    public void Published_standard_load(string json, double total) => Worked.Near(total, Load(json).Value("total", "VA"), 1e-6);

    // A 2025 California code note: 29,000 VA of other loads are 16,400, with new cooling of 6,000 22,400 VA, 93.3 A.
    // A trade magazine's optional example of 2020: 28,710 VA, 120 A.
    [Theory]
    [InlineData("""{"method": "existing", "edition": 2023, "floor_area": 1800, "dryers": [5000], "vehicle_charger": 9600, "cooling": 6000, "adds_heating_or_cooling": true, "fixed_appliances": [{"name": "water heater", "VA": 4500}]}""", 22_400, 93.3)]
    [InlineData("""{"method": "optional", "edition": 2020, "floor_area": 1500, "ranges": [6, 3], "dryers": [4000], "heating": 6720, "heating_kind": "heat pump", "supplement": 7000, "fixed_appliances": [{"name": "dishwasher", "VA": 1200}, {"name": "disposer", "VA": 900}, {"name": "water heater", "VA": 4500}]}""", 28_710, 119.6)]
    public void Published_pooled_load(string json, double total, double amps)
    {
        Worked.Near(total, Load(json).Value("total", "VA"), 1e-6);
        Worked.Near(amps, Load(json).Value("amps", "A"), 0.06);
    }

    // The same note's second case prints 127 A with a 125 A panel and counts the cooling it says to leave out. 127 A does not fit 125 A.
    [Fact]
    public void A_rating_is_never_rounded_down()
    {
        var working = Load("""{"method": "optional", "edition": 2023, "floor_area": 3000, "dryers": [5000], "ranges": [12], "fixed_appliances": [{"name": "water heater", "VA": 4500}, {"name": "pool", "VA": 5200}], "cooling": 8400, "service_rating": 125}""");
        Assert.InRange(working.Value("amps", "A"), 125.01, 128);
        Worked.Near(150, working.Value("next_standard_rating", "A"), 0);
        Assert.Equal("outside", working.Verdict.Word);
    }

    // A teaching video lists 5,000 VA of cooling and 6,000 VA of heat and adds 65 % of the heat as the larger; cooling at 100 % is.
    [Fact]
    public void Larger_is_taken_after_the_shares() =>
        Worked.Near(5_000, Load("""{"method": "optional", "edition": 2020, "floor_area": 1500, "cooling": 5000, "heating": 6000, "heating_kind": "central"}""").Value("heating_or_cooling", "VA"), 1e-9);

    // Not yet published as worked examples: D2(a), D2(c) and D1(a) again with the 2026 figures, 2 VA/ft² and 8,000 VA whole.
    [Fact]
    public void Edition_2026_halves_nothing_but_lighting_and_the_first_step()
    {
        Worked.Near(32_790, Load(D2c(2026, "")).Value("total", "VA"), 1e-6);
        var standard = Load("""{"method": "standard", "edition": 2026, "floor_area": 1500, "ranges": [12], "dryers": [5500]}""");
        Worked.Near(18_075, standard.Value("total", "VA"), 1e-6);
        Assert.Contains(standard.Sources, source => source.Contains("from memory", StringComparison.Ordinal));
    }

    [Fact]
    public void Existing_dwelling_in_2026_cannot_be_said()
    {
        var working = Load("""{"method": "existing", "edition": 2026, "floor_area": 1500, "service_rating": 200}""");
        Assert.Equal("cannot say", working.Verdict.Word);
        Assert.Null(working.Result["total"]);
    }

    // 220.53: four appliances count 75 % to 2017; from 2020 only those of 500 VA or more count.
    [Theory]
    [InlineData(2017, 7_050)]
    [InlineData(2020, 9_400)]
    public void Four_appliances_are_reduced_by_edition(int edition, double appliances) =>
        Worked.Near(appliances, Load($$"""
            {"method": "standard", "edition": {{edition}}, "floor_area": 1500,
             "fixed_appliances": [{"name": "water heater", "VA": 4500}, {"name": "dishwasher", "VA": 1200}, {"name": "cellar heater tape", "VA": 400}, {"name": "well pump", "VA": 3300}]}
            """).Value("appliances", "VA"), 1e-6);

    // 220.57 (2023): vehicle supply at 7,200 VA at least.
    [Theory]
    [InlineData(2020, 5000)]
    [InlineData(2023, 7200)]
    public void Vehicle_supply_by_edition(int edition, double counted)
    {
        double Total(string more) => Load($$"""{"method": "standard", "edition": {{edition}}, "floor_area": 1500{{more}}}""").Value("total", "VA");
        Worked.Near(counted, Total(", \"vehicle_charger\": \"5 kVA\"") - Total(""), 1e-6);
    }

    [Fact]
    public void Neutral_is_not_guessed_when_a_voltage_is_missing()
    {
        var working = Load("""{"method": "standard", "edition": 2023, "floor_area": 1500, "fixed_appliances": [{"name": "dishwasher", "VA": 1200}]}""");
        Assert.Null(working.Result["neutral"]);
        Assert.Contains(working.Steps, step => InWords.Of(step.Text).Contains("voltage of dishwasher", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(100, "cannot say")]
    [InlineData(77, "outside")]
    [InlineData(80, "outside")]
    public void Service_is_held_against_load_and_least(double rating, string verdict)
    {
        var working = Load($$"""{"method": "standard", "edition": 2023, "floor_area": 1500, "ranges": [12], "dryers": [5500], "service_rating": {{rating}}}""");
        Assert.Equal(verdict, working.Verdict.Word);
        Worked.Near(7750 / rating, working.Value("share_used", "%"), 1e-9);
    }

    // NEC 220.53: appliances fastened in place are part of the load. A sum without any of them is a least load and clears nothing.
    [Fact]
    public void A_load_without_any_appliance_clears_nothing()
    {
        const string Some = """{"method": "standard", "edition": 2023, "floor_area": 1500, "ranges": [12], "dryers": [5500], "service_rating": 100, "fixed_appliances": [{"name": "dishwasher", "VA": 1200}]}""";
        Assert.Equal("within", Load(Some).Verdict.Word);
        Assert.Equal("cannot say", Load(Some.Replace("""[{"name": "dishwasher", "VA": 1200}]""", "[]", StringComparison.Ordinal)).Verdict.Word);
    }

    [Fact]
    public void Without_a_rating_there_is_nothing_to_judge() =>
        Assert.Equal("cannot say", Load("""{"method": "standard", "edition": 2023, "floor_area": 1500}""").Verdict.Word);

    [Fact]
    public void Defaults_that_were_taken_are_steps()
    {
        var steps = Load("""{"method": "standard", "edition": 2023, "floor_area": 1500}""").Steps;
        foreach (var name in new[] { "Small appliance circuits not given", "Laundry circuits not given", "Volts not given" })
            Assert.Contains(steps, step => InWords.Of(step.Text).StartsWith(name, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"method": "quick", "edition": 2023, "floor_area": 1500}""", "method")]
    [InlineData("""{"method": "standard", "edition": 2018, "floor_area": 1500}""", "edition")]
    [InlineData("""{"method": "standard", "edition": 2035, "floor_area": 1500}""", "edition")]
    [InlineData("""{"method": "standard", "edition": 2023.5, "floor_area": 1500}""", "edition")]
    [InlineData("""{"method": "standard", "floor_area": 1500}""", "edition")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": -1500}""", "floor_area")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": "lots"}""", "floor_area")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": 1500, "ranges": [12, null]}""", "ranges[1]")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": 1500, "ranges": [40]}""", "ranges[0]")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": 1500, "fixed_appliances": [{"name": "x"}]}""", "fixed_appliances[0].VA")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": 1500, "heating": 9000}""", "heating_kind")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": 1500, "heating": 9000, "heating_kind": "separate"}""", "heating_units")]
    [InlineData("""{"method": "standard", "edition": 2023, "floor_area": 1500, "cooling": "3 tons"}""", "cooling")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("service-load", json, input);

    // 220.83(A), no new heating or cooling: a standards body's staff answer puts the existing cooling into the pool. 2,000 ft²:
    // 6,000 + 4,500 + 12,000 + 6,000 = 28,500; 8,000 + 40 % of 20,500 = 16,200 VA. Part B: 6,000 + 8,000 + 40 % of 14,500 = 19,800 VA.
    [Theory]
    [InlineData("false", 16_200)]
    [InlineData("true", 19_800)]
    public void Existing_dwelling_by_part(string adds, double total) =>
        Worked.Near(total, Load($$"""{"method": "existing", "edition": 2017, "floor_area": 2000, "ranges": [12], "cooling": 6000, "adds_heating_or_cooling": {{adds}}}""").Value("total", "VA"), 1e-6);

    [Fact]
    public void Metric_area_gives_the_same_load() =>
        Worked.Near(18_600, Load("""{"method": "standard", "edition": 2023, "floor_area": "139.3545600 m²", "ranges": ["12 kW"], "dryers": ["5.5 kVA"]}""").Value("total", "VA"), 1e-4);

    // Adding a fourth appliance can lower the standard load by the code's own 75 %, so that count stays fixed here; all else only adds.
    [Fact]
    public void More_load_never_asks_for_a_smaller_service() =>
        Gen.Select(Gen.Int[0, 2].Select(at => new[] { "standard", "optional", "existing" }[at]), Gen.Int[0, 3].Select(at => 2014 + 3 * at), Gen.Double[300, 8000], Gen.Double[2, 27], Gen.Double[0, 20_000], Gen.Double[0, 30_000]).Sample((method, edition, area, range, appliance, cooling) =>
        {
            double Service(double a, double r, double f, double c)
            {
                var working = Load($$"""{"method": "{{method}}", "edition": {{edition}}, "floor_area": {{a:R}}, "ranges": [{{r:R}}], "cooling": {{c:R}}, "fixed_appliances": [{"name": "x", "VA": {{f:R}}}]}""");
                return working.Value("minimum_service", "A");
            }
            var before = Service(area, range, appliance, cooling);
            return Service(area * 1.1, range, appliance, cooling) >= before && Service(area, Math.Min(27, range * 1.1), appliance, cooling) >= before
                && Service(area, range, appliance + 500, cooling) >= before && Service(area, range, appliance, cooling + 500) >= before;
        }, iter: 100);
}
