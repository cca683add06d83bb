using System.Text;
using System.Text.Json;

namespace Purlin.Hearing;

/// <summary>What was heard as JSON, as <c>docs/schema/heard.schema.json</c> has it.</summary>
public static class HeardJson
{
    private static readonly JsonWriterOptions Indented = new()
    {
        Indented = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping
    };

    /// <summary>One JSON object.</summary>
    public static string Write(Heard heard)
    {
        ArgumentNullException.ThrowIfNull(heard);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            json.WriteStartArray("proposals");
            foreach (var proposal in heard.Proposals) Write(json, proposal);
            json.WriteEndArray();
            json.WriteNumber("ignored", heard.Ignored);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, HeardProposal proposal)
    {
        json.WriteStartObject();
        Write(json, "from", proposal.From);
        Write(json, "to", proposal.To);
        json.WriteString("place", proposal.Place);
        json.WriteString("component", proposal.Component);
        json.WriteString("condition", proposal.Condition);
        json.WriteString("outcome", proposal.Outcome);
        json.WriteStartArray("amounts");
        foreach (var amount in proposal.Amounts)
        {
            json.WriteStartObject();
            json.WriteString("kind", amount.Kind);
            json.WriteNumber("value", Math.Round(amount.Value, 4));
            json.WriteString("unit", amount.Unit);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteString("trade", proposal.Trade);
        json.WriteBoolean("hedged", proposal.Hedged);
        json.WriteString("spot", proposal.Spot);
        json.WriteString("spread", proposal.Spread);
        json.WriteNumber("confidence", proposal.Confidence);
        Lists(json, proposal);
        json.WriteEndObject();

        static void Lists(Utf8JsonWriter json, HeardProposal proposal)
        {
            json.WriteStartArray("words");
            foreach (var range in proposal.Words)
            {
                json.WriteStartArray();
                json.WriteNumberValue(range.Start);
                json.WriteNumberValue(range.End);
                json.WriteEndArray();
            }
            json.WriteEndArray();
            json.WriteStartArray("photos");
            foreach (var photo in proposal.Photos) json.WriteStringValue(photo);
            json.WriteEndArray();
        }
    }

    private static void Write(Utf8JsonWriter json, string name, double? seconds)
    {
        if (seconds is { } known) json.WriteNumber(name, Math.Round(known, 2));
        else json.WriteNull(name);
    }
}
