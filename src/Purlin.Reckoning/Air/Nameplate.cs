using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Reckoning.Air.Plate;

namespace Purlin.Reckoning.Air;

/// <summary>
/// Reads a rating plate from text as typed or as a camera read it: what is there, how sure each part is, and nothing else.
/// </summary>
internal static class Nameplate
{
    internal static Calculation Calculation { get; } = new()
    {
        Name = "nameplate",
        Inputs =
        [
            new Input.Text("text", "nameplate.input.text", 8000) { Required = true },
            new Input.Choice("kind", "nameplate.input.kind",
                ["air conditioner", "heat pump", "indoor coil", "air handler", "furnace", "boiler", "water heater", "other"]),
            new Input.Whole("year_now", "nameplate.input.year-now", 1990, 2100),
        ],
        Sources = ["The plate itself", "Model-number capacity codes: common practice"],
        Work = Work,
    };

    private static Checked<Working> Work(Given given)
    {
        var sheet = new Worksheet(Calculation, given);
        var text = new PlateText(given.Text("text"));
        var model = PlateIdentity.Find(text, "model", 4);
        var serial = PlateIdentity.Find(text, "serial", 5);
        var refrigerant = PlateRefrigerant.Name(text);
        var fuel = PlateElectrical.FuelInput(text);
        var burns = Burns(given, text, refrigerant is not null, fuel is not null);
        var modelText = model?.Value.GetValue<string>();
        (string Name, PlateField? Field)[] fields =
        [
            ("model", model),
            ("serial", serial),
            ("capacity", PlateCapacity.Find(text, modelText, burns)),
            ("manufacture_date", PlateDate.Find(text, serial?.Value.GetValue<string>(), given.WholeOrNone("year_now"))),
            ("refrigerant", refrigerant),
            ("charge", PlateRefrigerant.Charge(text)),
            ("volts", PlateElectrical.Volts(text)),
            ("phase", PlateElectrical.Phase(text)),
            ("mca", PlateElectrical.Amps(text, "mca")),
            ("mocp", PlateElectrical.Amps(text, "mocp")),
            ("fuel_input", fuel ?? (burns ? PlateCapacity.FuelInput(modelText) : null)),
        ];
        foreach (var (name, field) in fields) Write(sheet, name, field);
        sheet.Caution("nameplate.caution.compare-plate-itself-photograph");
        if (fields.Any(field => field.Field?.Confidence == "inferred")) sheet.Caution("nameplate.caution.maker-codes-own-model");
        return Judge(sheet, fields);
    }

    // Digits of a furnace or water heater mean input or gallons, never tons.
    private static bool Burns(Given given, PlateText text, bool refrigerant, bool fuel) => given.TextOrNone("kind") switch
    {
        "furnace" or "boiler" or "water heater" => true,
        null => !refrigerant && (fuel || text.Raw.Contains("FURNACE", StringComparison.Ordinal)
            || text.Raw.Contains("WATER HEATER", StringComparison.Ordinal) || text.Raw.Contains("BOILER", StringComparison.Ordinal)),
        _ => false,
    };

    private static void Write(Worksheet sheet, string name, PlateField? field)
    {
        if (field is null) { sheet.NoResult(name); return; }
        var json = field.ToJson();
        if (name == "capacity") json["tons"] = Quantities.HeatRate.FromBtuPerHour(field.Value.GetValue<double>()).Tons;
        sheet.Result(name, json);
        sheet.Sentence($"{name}.reason", field.Reason);
        sheet.Say("nameplate.step.field", ("field", Words.OfInput(name)),
            ("found", $"{field.Value}{(field.Unit.Length > 0 ? " " + field.Unit : "")}"), ("confidence", Words.Of(field.Confidence)),
            ("reason", field.Reason));
    }

    private static Checked<Working> Judge(Worksheet sheet, (string Name, PlateField? Field)[] fields)
    {
        SaidValue List(Func<PlateField?, bool> which) =>
            SaidValue.Of(fields.Where(field => which(field.Field)).Select(field => Words.OfInput(field.Name)));
        var isRead = fields.Any(field => field.Field is not null && field.Field.Confidence != "inferred");
        if (Array.TrueForAll(fields, field => field.Field is null)) return sheet.CannotSay("nameplate.because.nothing-rating-plate-found");
        Said because = new("nameplate.because.read",
            ("read", List(field => field is not null && field.Confidence != "inferred")),
                ("inferred", List(field => field?.Confidence == "inferred")), ("missing", List(field => field is null)));
        return isRead ? sheet.Within(because) : sheet.CannotSay(because);
    }
}
