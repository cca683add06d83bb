using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>How soon hot water burns. Between published temperatures the time of the hotter one is taken: nothing is interpolated.</summary>
public static class ScaldTime
{
    private static readonly Table Burns = Tables.Read("water/scald.csv");
    private static readonly Table Limits = Tables.Read("water/scald-limits.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "scald-time",
        Title = "Hot water: time to a burn",
        Purpose = "How soon water of this temperature burns, and what that means.",
        Inputs = [new Input.Quantity("temperature", "temperature of the hot water at the tap", "°F", 32, 212) { Required = true }],
        Sources = [.. Burns.Rows.Select(row => row.Source).Distinct(), .. Limits.Rows.Select(row => row.Source)],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var (sheet, temperature) = (new Worksheet(Calculation, given), given.Number("temperature"));
        var row = Burns.Rows.FirstOrDefault(row => row.Number("fahrenheit") >= temperature) ?? Burns.Rows[^1];
        var most = Limit(sheet, "most");
        sheet.Step("Temperature at the tap", temperature, "°F");
        sheet.Caution("Children, older people and people who cannot feel or move away are burned sooner than these times say.");
        if (temperature < Burns.Rows[0].Number("fahrenheit")) return Mild(sheet, temperature);
        sheet.From(row.Source);
        var seconds = row.Number("seconds");
        if (temperature > row.Number("fahrenheit")) sheet.Say($"Hotter than the last published temperature, {row.Number("fahrenheit"):0} °F: at most its time");
        else if (temperature < row.Number("fahrenheit")) sheet.Say($"Between published temperatures: the time at {row.Number("fahrenheit"):0} °F is taken, the shorter one");
        sheet.Result("time", sheet.Step("Time to a serious burn", seconds, "s"), "s");
        var meaning = temperature <= most ? "usual limit" : temperature < Limit(sheet, "danger") ? "hot" : "scalding";
        sheet.Result("meaning", meaning);
        return temperature <= most
            ? sheet.Within($"{temperature:0.#} °F is no hotter than {most:0} °F; it takes minutes to burn.")
            : sheet.Outside($"{temperature:0.#} °F is hotter than {most:0} °F; it can burn within {Time(seconds)}.");
    }

    private static Checked<Working> Mild(Worksheet sheet, double temperature)
    {
        sheet.Say($"Cooler than the lowest published temperature, {Burns.Rows[0].Number("fahrenheit"):0} °F: no time is published");
        sheet.Result("time", null);
        var low = temperature < Limit(sheet, "low");
        sheet.Result("meaning", low ? "lukewarm" : "warm");
        if (low) sheet.Say("Too cool for washing: the heater may be off, turned down or failing");
        return sheet.Within($"{temperature:0.#} °F is cooler than any temperature for which a burn time is published{(low ? "; it is lukewarm for washing" : "")}.");
    }

    private static double Limit(Worksheet sheet, string name)
    {
        var row = Limits.Rows.Single(row => row["limit"] == name);
        sheet.From(row.Source);
        return row.Number("fahrenheit");
    }

    private static string Time(double seconds) => seconds >= 60 ? $"{seconds / 60:0.#} minutes" : seconds == 1 ? "1 second" : $"{seconds:0.#} seconds";
}
