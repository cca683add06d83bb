using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Report.Writing;

namespace Purlin.Report;

/// <summary>The matters as rows for other programs: a table for a spreadsheet, and JSON.</summary>
public static class FindingsFile
{
    private static readonly string[] Columns = ["number", "id", "title", "weight", "by_when", "by_when_order", "system", "places", "where", "quantity", "seen", "why", "do", "trade", "questions", "photographs"];

    /// <summary>Rows of comma-separated values (RFC 4180), UTF-8 with a byte order mark, so that a spreadsheet reads the letters right.</summary>
    public static byte[] Csv(ReportModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        StringBuilder rows = new();
        rows.Append(string.Join(',', Columns)).Append("\r\n");
        foreach (var matter in model.Matters) rows.Append(string.Join(',', Cells(matter).Select(cell => Quoted(cell.Text)))).Append("\r\n");
        return [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(rows.ToString())];
    }

    /// <summary>The same as one JSON object.</summary>
    public static JsonObject Json(ReportModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new JsonObject
        {
            ["format"] = "purlin-findings",
            ["version"] = 1,
            ["address"] = model.Cover.Address,
            ["issue"] = model.Words.Issue(model.Mark),
            ["up_to"] = model.Mark.At.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
            ["invented"] = model.Record.Inspection.Opening?.Body.Demo == true,
            ["findings"] = new JsonArray([.. model.Matters.Select(matter => (JsonNode)new JsonObject(Cells(matter).Select((cell, index) => KeyValuePair.Create(Columns[index], cell.Json))))]),
        };
    }

    private static IEnumerable<(string Text, JsonNode? Json)> Cells(Matter matter)
    {
        (string, JsonNode?) Text(string text) => (text, JsonValue.Create(text));
        (string, JsonNode?) Number(int number) => (number.ToString(CultureInfo.InvariantCulture), JsonValue.Create(number));
        (string, JsonNode?) Many(IEnumerable<string> texts) => (string.Join("; ", texts), new JsonArray([.. texts.Select(text => (JsonNode)JsonValue.Create(text))]));
        return
        [
            Number(matter.Number), Text(matter.Finding), Text(matter.Title), Text(matter.Weight.Word()), Text(matter.Due.By.Word()), Number((int)matter.Due.By), Text(matter.System), Many(matter.Places),
            Text(matter.Say(MatterPart.Where)), Text(matter.Quantity), Text(matter.Say(MatterPart.Seen)), Text(matter.Say(MatterPart.Why)), Text(matter.Say(MatterPart.Do)), Text(matter.Trade),
            Many(matter.Questions.Select(question => $"{question.Ask} ({question.Trade})")), Many(matter.Pictures.Select(picture => picture.Sha)),
        ];
    }

    // A cell that begins like a formula would be reckoned by a spreadsheet: what was typed on site must stay text.
    private static string Quoted(string text)
    {
        var safe = text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
        return $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
