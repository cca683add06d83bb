using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Structure;

/// <summary>
/// Measured things held one by one against their limits: each gives a line of the result, and what failed gives the sentence.
/// </summary>
internal sealed class LimitSheet(Worksheet sheet)
{
    // An eighth of an inch in millimetres and back is the same eighth.
    private const double Slack = 1e-9;

    private readonly JsonArray lines = [];
    private readonly List<Said> failed = [];
    private int measured;

    public bool AnyFailed => failed.Count > 0;

    public bool AnyMeasured => measured > 0;

    public Said Failed => new("limit-sheet.failed", ("failed", new Said("list.apart", ("of", SaidValue.Of(failed)))));

    /// <summary>At most the limit.</summary>
    public void AtMost(string name, double? found, TableRow? limit, string unit = "in") =>
        Hold(name, found, limit, unit, (value, bound) => value <= bound + Slack, "limit-sheet.more");

    /// <summary>At least the limit.</summary>
    public void AtLeast(string name, double? found, TableRow? limit, string unit = "in") =>
        Hold(name, found, limit, unit, (value, bound) => value >= bound - Slack, "limit-sheet.less");

    /// <summary>Something that must be there.</summary>
    public void There(string name, bool? found, string source)
    {
        sheet.From(source);
        Line(name, null, null, "", found switch { true => "within", false => "outside", null => "cannot say" });
        if (found is not null) measured++;
        if (found == false) failed.Add(new("limit-sheet.missing", ("name", Words.Of(name))));
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
        sheet.Step("limit-sheet.limit", value, unit, ("name", Words.Of(name)), ("limit", bound, unit));
        Line(name, value, bound, unit, good ? "within" : "outside");
        if (!good) failed.Add(new(wrong, ("name", Words.Of(name)), ("found", value, unit), ("limit", bound)));
    }

    private void Line(string name, double? found, double? limit, string unit, string verdict) => lines.Add((JsonNode)new JsonObject
    {
        ["name"] = name,
        ["found"] = found is { } value ? Worksheet.Quantity(value, unit) : null,
        ["limit"] = limit is { } bound ? Worksheet.Quantity(bound, unit) : null,
        ["verdict"] = verdict,
    });
}
