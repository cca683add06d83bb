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
        Inputs =
        [
            new Input.Choice("fuel", "water-heater-size.input.fuel", ["gas", "electric", "propane", "oil"]) { Required = true },
            new Input.Whole("bedrooms", "water-heater-size.input.bedrooms", 1, 20) { Required = true },
            new Input.Quantity("baths", "water-heater-size.input.baths", "", 0.5, 20),
            new Input.Quantity("tank", "water-heater-size.input.tank", "gal", 1, 200),
            new Input.Quantity("first_hour", "water-heater-size.input.first-hour", "gal", 1, 400),
            new Input.Choice("edition", "water-heater-size.input.edition", ["to 2012", "from 2015"]),
        ],
        Sources = [Storage.Source, FirstHour.Source + " (from memory)"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        if (!given.Has("tank") && !given.Has("first_hour"))
            return new Refusal("tank", "refused.missing", "water-heater-size.allowed.size-tank-first-hour");
        var sheet = new Worksheet(Calculation, given);
        var bedrooms = given.Whole("bedrooms");
        var baths = sheet.Or("baths", bedrooms / 2.0 + 0.5, "", "water-heater-size.why.half-bedrooms-half-protocols");
        var (least, rating) = (Tank(sheet, given.Text("fuel"), bedrooms, baths), Rating(sheet, given, bedrooms, baths));
        sheet.Caution("water-heater-size.caution.habits-decide-much-rooms");
        if (given.NumberOrNone("first_hour") is { } hour && rating is { } needed)
            return hour >= needed ? sheet.Within("water-heater-size.because.first-hour-rating-least", ("hour", hour, "gal"),
                ("needed", needed, "gal"))
                : sheet.Outside("water-heater-size.because.first-hour-rating-less", ("hour", hour, "gal"), ("needed", needed, "gal"));
        if (given.NumberOrNone("tank") is { } tank)
            return tank >= least ? sheet.Within("water-heater-size.because.tank-least-usual-bedrooms", ("tank", tank, "gal"),
                ("least", least, "gal"), ("bedrooms", bedrooms), ("baths", baths))
                : sheet.Outside("water-heater-size.because.tank-less-usual-bedrooms", ("tank", tank, "gal"), ("least", least, "gal"),
                ("bedrooms", bedrooms), ("baths", baths));
        return sheet.CannotSay("water-heater-size.because.table-first-hour-ratings");
    }

    private static double Tank(Worksheet sheet, string fuel, int bedrooms, double baths)
    {
        var rows = Storage.Rows.Where(row => row.Number("bedrooms") == Math.Min(bedrooms, 6));
        var row = rows.First(row => row.NumberOrNone("baths_most") is not { } most || baths <= most);
        sheet.From(row.Source);
        sheet.Result("least_input", fuel == "electric"
            ? Worksheet.Quantity(row.Number("electric_kw"), "kW") : Worksheet.Quantity(row.Number("gas_btu_h"), "Btu/h"));
        return sheet.Result("least_tank",
            sheet.Step("water-heater-size.step.usual-tank-bedrooms-baths", row.Number(fuel == "electric" ? "electric_gal" : "gas_gal"),
            "gal", ("bedrooms", bedrooms), ("baths", baths), ("fuel", fuel)), "gal");
    }

    // None outside the table.
    private static double? Rating(Worksheet sheet, Given given, int bedrooms, double baths)
    {
        if (!given.Has("first_hour"))
        {
            sheet.Result("least_first_hour", null);
            return null;
        }
        var edition = sheet.WordOr("edition", "from 2015", "water-heater-size.why.newer-smaller-two-older");
        var row = FirstHour.Rows.Where(row => row["editions"] == edition && row.Number("baths_most") >= baths
            && row.Number("bedrooms") >= bedrooms)
            .OrderBy(row => row.Number("baths_most")).ThenBy(row => row.Number("bedrooms")).FirstOrDefault();
        if (row is null)
        {
            sheet.Say("water-heater-size.step.no-row-first-hour");
            sheet.Result("least_first_hour", null);
            return null;
        }
        sheet.From(row.Source);
        return sheet.Result("least_first_hour",
            sheet.Step("water-heater-size.step.first-hour-rating-code", row.Number("gallons"), "gal", ("edition", edition)), "gal");
    }
}
