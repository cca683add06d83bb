using Purlin.Journal;

namespace Purlin.Reckoning.Water;

/// <summary>How soon hot water burns. Between published temperatures the time falls by the same share with each degree.</summary>
public static class ScaldTime
{
    private static readonly Table Burns = Tables.Read("water/scald.csv");
    private static readonly Table Limits = Tables.Read("water/scald-limits.csv");

    /// <summary>The reckoning.</summary>
    public static Calculation Calculation { get; } = new()
    {
        Name = "scald-time",
        Inputs = [new Input.Quantity("temperature", "scald-time.input.temperature", "°F", 32, 212) { Required = true }],
        Sources = [.. Burns.Rows.Select(row => row.Source).Distinct(), .. Limits.Rows.Select(row => row.Source)],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var (sheet, temperature) = (new Worksheet(Calculation, given), given.Number("temperature"));
        var at = Burns.Rows.TakeWhile(row => row.Number("fahrenheit") < temperature).Count();
        var row = Burns.Rows[Math.Min(at, Burns.Rows.Length - 1)];
        var most = Limit(sheet, "most");
        sheet.Step("scald-time.step.temperature-tap", temperature, "°F");
        sheet.Caution("scald-time.caution.children-older-people-people");
        if (temperature < Burns.Rows[0].Number("fahrenheit")) return Mild(sheet, temperature);
        sheet.From(row.Source);
        var seconds = Seconds(at, row, temperature);
        if (temperature > row.Number("fahrenheit"))
            sheet.Say("scald-time.step.hotter-last-published-temperature", ("fahrenheit", row.Number("fahrenheit"), "°F"));
        else if (temperature < row.Number("fahrenheit"))
            sheet.Say("scald-time.step.between-two-published", ("cooler", Burns.Rows[at - 1].Number("fahrenheit"), "°F"),
                ("hotter", row.Number("fahrenheit"), "°F"));
        sheet.Result("time", sheet.Step("scald-time.step.time-serious-burn", seconds, "s"), "s");
        var meaning = temperature <= most ? "usual limit" : temperature < Limit(sheet, "danger") ? "hot" : "scalding";
        sheet.Result("meaning", meaning);
        return temperature <= most
            ? sheet.Within("scald-time.because.no-hotter-takes-minutes", ("temperature", temperature, "°F"), ("most", most, "°F"))
            : sheet.Outside("scald-time.because.hotter-can-burn-within", ("temperature", temperature, "°F"), ("most", most, "°F"),
                ("seconds", Time(seconds)));
    }

    private static Checked<Working> Mild(Worksheet sheet, double temperature)
    {
        sheet.Say("scald-time.step.cooler-lowest-published", ("fahrenheit", Burns.Rows[0].Number("fahrenheit"), "°F"));
        sheet.Result("time", null);
        var low = temperature < Limit(sheet, "low");
        sheet.Result("meaning", low ? "lukewarm" : "warm");
        if (low) sheet.Say("scald-time.step.too-cool-washing-heater");
        return sheet.Within("scald-time.because.cooler-temperature-burn-time", ("temperature", temperature, "°F"),
            ("low", low ? "yes" : "no"));
    }

    // Burn times fall by about the same share with each degree, so one reads between their logarithms.
    private static double Seconds(int at, TableRow row, double temperature)
    {
        if (at == 0 || at >= Burns.Rows.Length) return row.Number("seconds");
        var cooler = Burns.Rows[at - 1];
        var share = (temperature - cooler.Number("fahrenheit")) / (row.Number("fahrenheit") - cooler.Number("fahrenheit"));
        return cooler.Number("seconds") * Math.Pow(row.Number("seconds") / cooler.Number("seconds"), share);
    }

    private static double Limit(Worksheet sheet, string name)
    {
        var row = Limits.Rows.Single(row => row["limit"] == name);
        sheet.From(row.Source);
        return row.Number("fahrenheit");
    }

    private static Said Time(double seconds) =>
        seconds >= 60 ? new("time.minutes", ("minutes", seconds / 60)) : new("time.seconds", ("seconds", seconds));
}
