using System.Text.Json.Nodes;

namespace Purlin.Reckoning.Structure;

/// <summary>Measured things held one by one against their limits: each gives a line of the result, and what failed gives the sentence.</summary>
internal sealed class LimitSheet(Worksheet sheet)
{
    // An eighth of an inch in millimetres and back is the same eighth.
    private const double Slack = 1e-9;

    private readonly JsonArray lines = [];
    private readonly List<string> failed = [];
    private int measured;

    public bool AnyFailed => failed.Count > 0;

    public bool AnyMeasured => measured > 0;

    public string Failed => Capital(string.Join("; ", failed)) + ".";

    /// <summary>At most the limit.</summary>
    public void AtMost(string name, double? found, TableRow? limit, string unit = "in") => Hold(name, found, limit, unit, (value, bound) => value <= bound + Slack, "more than");

    /// <summary>At least the limit.</summary>
    public void AtLeast(string name, double? found, TableRow? limit, string unit = "in") => Hold(name, found, limit, unit, (value, bound) => value >= bound - Slack, "less than");

    /// <summary>Something that must be there.</summary>
    public void There(string name, bool? found, string source)
    {
        sheet.From(source);
        Line(name, null, null, "", found switch { true => "within", false => "outside", null => "cannot say" });
        if (found is not null) measured++;
        if (found == false) failed.Add($"{name} is missing");
    }

    /// <summary>Writes the lines into the result.</summary>
    public void Write() => sheet.Result("limits", lines);

    private void Hold(string name, double? found, TableRow? limit, string unit, Func<double, double, bool> holds, string wrong)
    {
        if (limit is null) return;
        sheet.From(limit.Source);
        var bound = limit.Number("value");
        if (found is not { } value)
        {
            Line(name, null, bound, unit, "cannot say");
            return;
        }
        measured++;
        var good = holds(value, bound);
        sheet.Step($"{Capital(name)}, limit {bound:0.###} {unit}".TrimEnd(), value, unit);
        Line(name, value, bound, unit, good ? "within" : "outside");
        if (!good) failed.Add($"{name} is {value:0.###} {unit}, {wrong} {bound:0.###}".Replace("  ", " ", StringComparison.Ordinal));
    }

    private void Line(string name, double? found, double? limit, string unit, string verdict) => lines.Add((JsonNode)new JsonObject
    {
        ["name"] = name,
        ["found"] = found is { } value ? Worksheet.Quantity(value, unit) : null,
        ["limit"] = limit is { } bound ? Worksheet.Quantity(bound, unit) : null,
        ["verdict"] = verdict,
    });

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
