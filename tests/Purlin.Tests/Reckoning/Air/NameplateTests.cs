using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Purlin.Reckoning;

namespace Purlin.Tests.Reckoning.Air;

/// <summary>
/// Plates are invented here, no maker's. The confusions (0 and O, 1 and I, 5 and S, 8 and B) and the ways of writing a date are common
/// practice of reading plates by camera.
/// </summary>
public sealed class NameplateTests
{
    private static Working Read(string text, string? kind = null, int? yearNow = 2026)
    {
        var input = new JsonObject { ["text"] = text };
        if (kind is not null) input["kind"] = kind;
        if (yearNow is { } year) input["year_now"] = year;
        return Reckonings.Reckon("nameplate", input).OrThrow();
    }

    private static (string? Value, string? Confidence) Field(Working working, string name) => working.Result[name] is JsonObject field
        ? (field["value"]!.ToJsonString().Trim('"'), (string?)field["confidence"])
        : (null, null);

    private const string Clean = """
        OUTDOOR UNIT
        MODEL NO. XYZ4036A2300
        SERIAL NO. WQ27346X9
        VOLTS 208/230  PH 1  HZ 60
        COMPRESSOR RLA 14.1  LRA 73
        MIN. CIRCUIT AMPACITY 19.7 A
        MAX FUSE OR CKT BKR (HACR TYPE) 35 AMPS
        REFRIGERANT R-410A  FACTORY CHARGE 7 LBS 8 OZ
        MFD 05/2008
        """;

    [Theory]
    [InlineData("model", "XYZ4036A2300", "likely")]
    [InlineData("volts", "230", "clear")]
    [InlineData("phase", "1", "clear")]
    [InlineData("mca", "19.7", "clear")]
    [InlineData("mocp", "35", "clear")]
    [InlineData("refrigerant", "R-410A", "clear")]
    [InlineData("charge", "7.5", "clear")]
    [InlineData("manufacture_date", "2008-05", "clear")]
    [InlineData("capacity", "36000", "inferred")]
    [InlineData("serial", "WQ27346X9", "clear")]
    [InlineData("fuel_input", null, null)]
    public void Clean_plate(string field, string? value, string? confidence) => Assert.Equal((value, confidence), Field(Read(Clean), field));

    // The same plate as a camera spoils it.
    private const string Spoilt = """
        M0DEL NO: XYZ4O36A23OO
        5ERIAL N0: WQ27346X9
        V0LTS 2O8/23O PHA5E I
        MIN CIRCUIT AMPACITY: I9.7
        MAX. FU5E 3S A
        REFRIGERANT: R-41OA
        CHARGE: 7.S LB5
        MFD O5/2OO8
        """;

    [Theory]
    [InlineData("model", "XYZ4O36A23OO", "likely")]
    [InlineData("serial", "WQ27346X9", "clear")]
    [InlineData("mca", "19.7", "mended")]
    [InlineData("mocp", "35", "mended")]
    [InlineData("refrigerant", "R-410A", "mended")]
    [InlineData("charge", "7.5", "mended")]
    [InlineData("manufacture_date", "2008-05", "mended")]
    [InlineData("capacity", "36000", "inferred")]
    [InlineData("volts", "230", "mended")]
    [InlineData("phase", "1", "mended")]
    public void Spoilt_plate_is_mended_where_only_a_digit_can_stand(string field, string? value, string? confidence) => Assert.Equal((value, confidence), Field(Read(Spoilt), field));

    [Theory]
    [InlineData("MFD 05/2008", "2008-05", "clear")]
    [InlineData("MFD 05 2008", "2008-05", "clear")]
    [InlineData("MFG DATE: 5-2008", "2008-05", "clear")]
    [InlineData("DATE OF MANUFACTURE 2008-05", "2008-05", "clear")]
    [InlineData("DATE MFD: 05/12/2008", "2008-05", "clear")]
    [InlineData("MFR DATE MAY 2008", "2008-05", "clear")]
    [InlineData("Manufactured in December, 1999", "1999-12", "clear")]
    [InlineData("MFD\n05/2008", "2008-05", "clear")]
    [InlineData("MFG. 2008", "2008", "clear")]
    [InlineData("MFD 05/08", "2008-05", "inferred")]
    [InlineData("MFD MAY 98", "1998-05", "inferred")]
    [InlineData("DATE CODE 0823", "2008", "inferred")]
    [InlineData("MFD 9942", "1999", "inferred")]
    [InlineData("MFD 13/2008", null, null)]
    [InlineData("MFD 05/2031", null, null)]
    [InlineData("MFG BY SOMEBODY 1234", null, null)]
    [InlineData("2008", null, null)]
    public void Styles_of_date(string text, string? value, string? confidence) => Assert.Equal((value, confidence), Field(Read(text), "manufacture_date"));

    [Fact]
    public void Year_and_week_at_the_head_of_a_serial_is_only_inferred_and_names_the_other_reading()
    {
        var working = Read("SERIAL 0823X12345");
        Assert.Equal(("2008", "inferred"), Field(working, "manufacture_date"));
        Assert.Contains("2023", (string)working.InWords(InWords.Tongue)["manufacture_date"]!["reason"]!, StringComparison.Ordinal);
        Assert.Equal((null, null), Field(Read("SERIAL 7712X12345"), "manufacture_date"));
        Assert.Equal((null, null), Field(Read("SERIAL X082312345"), "manufacture_date"));
    }

    // Model-number capacity codes (common practice; the trade thread that equipment lists come from): 036 is 3 tons; 19 is 1.5 tons by a
    // maker that prints one more; a furnace's 080 is 80,000 Btu/h of input and no tons; 1234 says nothing.
    [Theory]
    [InlineData("MODEL XYZ4036A1000", null, "36000", "036")]
    [InlineData("MODEL AB13-19-230", null, "18000", "one more")]
    [InlineData("MODEL QQ1234", null, null, null)]
    [InlineData("MODEL AB048", "heat pump", "48000", "048")]
    [InlineData("MODEL AB18-36", null, null, null)]
    [InlineData("MODEL FURN060C", "furnace", null, null)]
    public void Capacity_is_at_most_inferred_with_its_reason(string text, string? kind, string? heat, string? reason)
    {
        var working = Read(text, kind);
        Assert.Equal(heat, Field(working, "capacity").Value);
        if (reason is not null) Assert.Contains(reason, (string)working.InWords(InWords.Tongue)["capacity"]!["reason"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void Furnace_digits_are_input_and_a_printed_input_goes_first()
    {
        Assert.Equal(("80000", "inferred"), Field(Read("MODEL FURN080C", "furnace"), "fuel_input"));
        Assert.Equal(("75000", "clear"), Field(Read("FORCED AIR FURNACE\nMODEL FURN080C\nINPUT 75,000 BTU/HR"), "fuel_input"));
        Assert.Equal(("80000", "mended"), Field(Read("MAX INPUT RATING 8O,OOOBTUH"), "fuel_input"));
        Assert.Equal((null, null), Field(Read("INPUT 24 V"), "fuel_input"));
    }

    [Fact]
    public void Printed_capacity_goes_before_digits()
    {
        Assert.Equal(("34600", "clear"), Field(Read("MODEL XYZ4036A\nCOOLING CAPACITY 34600 BTUH"), "capacity"));
        Assert.Equal(("36000", "clear"), Field(Read("MODEL AB018\n3 TON"), "capacity"));
    }

    // Labels in one row and values in the next: a value could belong to either label, so neither is read.
    [Fact]
    public void Columns_are_not_guessed()
    {
        var working = Read("MIN CIRCUIT AMPACITY   MAX FUSE\n19.7   35");
        Assert.Equal((null, null), Field(working, "mca"));
    }

    [Theory]
    [InlineData("SERIAL NUM-\nBER: AB12345", "serial", "AB12345")]
    [InlineData("MODEL\nXYZ-36", "model", "XYZ-36")]
    [InlineData("M/N XYZ-36 S/N AB12345", "serial", "AB12345")]
    public void Broken_lines(string text, string field, string value) => Assert.Equal(value, Field(Read(text), field).Value);

    // Fewer characters than any maker uses (common practice) are a scrap of another word, no number.
    [Theory]
    [InlineData("MODEL A12", "model")]
    [InlineData("SERIAL A123", "serial")]
    [InlineData("MODEL YEAR", "model")]
    public void A_scrap_is_no_identity(string text, string field) => Assert.Null(Read(text).Result[field]);

    [Theory]
    [InlineData("CHARGE 98 OZ", 6.125)]
    [InlineData("CHARGE: 6.5LBS", 6.5)]
    [InlineData("HCFC-22 FACTORY CHARGE 5 LB. 4 OZ.", 5.25)]
    public void Charge_in_pounds(string text, double pounds) => Worked.Near(pounds, (double)Read(text).Result["charge"]!["value"]!, 1e-9);

    [Theory]
    [InlineData("WEIGHT 150 LBS")]
    [InlineData("CHARGE 900 LBS")]
    public void A_weight_is_no_charge(string text) => Assert.Null(Read(text).Result["charge"]);

    [Theory]
    [InlineData("HCFC-22", "R-22")]
    [InlineData("R22", "R-22")]
    [InlineData("R 4S4B", "R-454B")]
    [InlineData("R-99", null)]
    public void Refrigerant_by_any_of_its_names(string text, string? name) => Assert.Equal(name, Field(Read(text), "refrigerant").Value);

    [Fact]
    public void Nothing_readable_cannot_be_said()
    {
        var working = Read("the quick brown fox");
        Assert.Equal("cannot say", working.Verdict.Word);
        Assert.All(working.Result, member => Assert.Null(member.Value));
    }

    [Fact]
    public void Serial_code_alone_gives_no_reading_of_a_date_behind_the_inspection() =>
        Assert.Equal((null, null), Field(Read("MFD 05/2020", yearNow: 2019), "manufacture_date"));

    [Theory]
    [InlineData("""{"text": ""}""", "text")]
    [InlineData("{}", "text")]
    [InlineData("""{"text": "x", "kind": "car"}""", "kind")]
    [InlineData("""{"text": 5}""", "text")]
    public void Bad_input_is_refused_by_name(string json, string input) => Worked.Refused("nameplate", json, input);

    // Texts made to make a pattern run wild: each is read to its end.
    [Theory]
    [InlineData('0')]
    [InlineData(' ')]
    [InlineData('S')]
    [InlineData('-')]
    [InlineData('\n')]
    public void Hostile_text_is_read_to_its_end(char filling) =>
        Assert.Null(Read("CHARGE " + new string(filling, 3900) + " MFD MIN MAX DATE OF " + new string(filling, 3900)).Result["mca"]);

    [Fact]
    public void Too_long_a_text_is_refused() => Assert.False(Reckonings.Reckon("nameplate", new JsonObject { ["text"] = new string('A', 8001) }).IsAccepted);

    // Whatever the camera sees: it never throws, and a model or serial is always a piece of the text.
    [Fact]
    public void Any_text_is_read_without_harm_and_identities_are_never_made_up() =>
        Gen.Select(Gen.OneOf(Gen.String[Gen.Char["MODELSRIAN0158/:-. \nRVPHFDGC3624XQ"], 1, 400], Gen.String[1, 400]), Gen.Int[0, 3]).Sample((noise, at) =>
        {
            var text = new[] { noise, Clean + noise, noise + Spoilt, "MODEL " + noise }[at];
            if (text.Length is 0 or > 8000) return true;
            JsonNode? node = JsonValue.Create(text);
            var tried = Reckonings.Reckon("nameplate", new JsonObject { ["text"] = node });
            if (!tried.IsAccepted) return false;
            var plain = text.ToUpperInvariant().ReplaceLineEndings("\n");
            var joined = System.Text.RegularExpressions.Regex.Replace(plain, @"([A-Z0-9])-[ \t]*\n[ \t]*", "$1");
            return new[] { "model", "serial" }.All(name => Field(tried.OrThrow(), name).Value is not { } value || joined.Contains(value, StringComparison.Ordinal));
        }, iter: 3000);
}
