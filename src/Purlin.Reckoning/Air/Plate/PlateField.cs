using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>
/// One thing found on a plate, and how sure it is: <c>clear</c>, <c>likely</c> (holds characters that cameras confuse), <c>mended</c>
/// (such characters were put right) or <c>inferred</c> (not printed as such; the reason says how it came).
/// </summary>
/// <param name="Value">Number or text.</param>
/// <param name="Unit">Empty for text.</param>
/// <param name="Confidence">One of the four words.</param>
/// <param name="Reason">How it was found.</param>
/// <param name="AsRead">What stands on the plate.</param>
internal sealed record PlateField(JsonValue Value, string Unit, string Confidence, Said Reason, string AsRead)
{
    internal JsonObject ToJson()
    {
        var json = new JsonObject { ["value"] = Value.DeepClone() };
        if (Unit.Length > 0) json["unit"] = Unit;
        json["confidence"] = Confidence;
        json["reason"] = null;
        json["as_read"] = AsRead;
        return json;
    }
}
