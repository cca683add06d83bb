using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>Whether a water heater is large enough for the bedrooms and baths of a house.</summary>
public static class WaterHeaterSize
{
    private static readonly Table Storage = Tables.Read("water/storage-tank.csv");
    private static readonly Table FirstHour = Tables.Read("water/first-hour.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "water-heater-size",
        Title = "Water heater: size",
        Purpose = "Least tank and least first-hour rating for the bedrooms and baths of a house.",
        Inputs =
        [
            new Input.Choice("fuel", "what heats it", ["gas", "electric", "propane", "oil"]) { Required = true },
            new Input.Whole("bedrooms", "bedrooms of the house", 1, 20) { Required = true },
            new Input.Quantity("baths", "baths; a half bath is 0.5", "", 0.5, 20),
            new Input.Quantity("tank", "size of the tank", "gal", 1, 200),
            new Input.Quantity("first_hour", "first-hour rating from its label", "gal", 1, 400),
            new Input.Choice("edition", "which editions of the Uniform Plumbing Code", ["to 2012", "from 2015"]),
        ],
        Sources = [Storage.Source, FirstHour.Source + " (from memory)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (!given.Has("tank") && !given.Has("first_hour")) return new Refusal("tank", "missing", "the size of the tank, or the first-hour rating, or both");
        var sheet = new Worksheet(Calculation, given);
        var bedrooms = given.Whole("bedrooms");
        var baths = sheet.Or("baths", bedrooms / 2.0 + 0.5, "", "half the bedrooms and a half, as the protocols have it");
        var (least, rating) = (Tank(sheet, given.Text("fuel"), bedrooms, baths), Rating(sheet, given, bedrooms, baths));
        sheet.Caution("Habits decide as much as rooms: a large tub or several showers in a row need more.");
        if (given.NumberOrNone("first_hour") is { } hour && rating is { } needed)
            return hour >= needed ? sheet.Within($"Its first-hour rating of {hour:0.#} gal is at least the {needed:0.#} gal of the code.") : sheet.Outside($"Its first-hour rating of {hour:0.#} gal is less than the {needed:0.#} gal of the code.");
        if (given.NumberOrNone("tank") is { } tank)
            return tank >= least ? sheet.Within($"A tank of {tank:0.#} gal is at least the usual {least:0.#} gal for {bedrooms} bedrooms and {baths:0.#} baths.") : sheet.Outside($"A tank of {tank:0.#} gal is less than the usual {least:0.#} gal for {bedrooms} bedrooms and {baths:0.#} baths.");
        return sheet.CannotSay("The table of first-hour ratings has no row for so many baths and bedrooms.");
    }

    private static double Tank(Worksheet sheet, string fuel, int bedrooms, double baths)
    {
        var rows = Storage.Rows.Where(row => row.Number("bedrooms") == Math.Min(bedrooms, 6));
        var row = rows.First(row => row.NumberOrNone("baths_most") is not { } most || baths <= most);
        sheet.From(row.Source);
        sheet.Result("least_input", fuel == "electric" ? Worksheet.Quantity(row.Number("electric_kw"), "kW") : Worksheet.Quantity(row.Number("gas_btu_h"), "Btu/h"));
        return sheet.Result("least_tank", sheet.Step($"Usual tank for {bedrooms} bedrooms, {baths:0.#} baths, {fuel}", row.Number(fuel == "electric" ? "electric_gal" : "gas_gal"), "gal"), "gal");
    }

    // None outside the table.
    private static double? Rating(Worksheet sheet, Given given, int bedrooms, double baths)
    {
        if (!given.Has("first_hour"))
        {
            sheet.Result("least_first_hour", null);
            return null;
        }
        var edition = sheet.WordOr("edition", "from 2015", "the newer and smaller of the two; an older heater may have been chosen by the older one");
        var row = FirstHour.Rows.Where(row => row["editions"] == edition && row.Number("baths_most") >= baths && row.Number("bedrooms") >= bedrooms)
            .OrderBy(row => row.Number("baths_most")).ThenBy(row => row.Number("bedrooms")).FirstOrDefault();
        if (row is null)
        {
            sheet.Say("No row of the first-hour table holds so many baths and bedrooms");
            sheet.Result("least_first_hour", null);
            return null;
        }
        sheet.From(row.Source);
        return sheet.Result("least_first_hour", sheet.Step($"First-hour rating the code asks for ({edition})", row.Number("gallons"), "gal"), "gal");
    }
}
