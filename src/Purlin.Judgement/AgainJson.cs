using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Journal.Merge;

namespace Purlin.Judgement;

/// <summary>Writes what is to be looked at again, and lines that could not be read, as JSON.</summary>
internal static class AgainJson
{
    public static JsonObject Write(LookAgain again) => new()
    {
        ["id"] = again.Id,
        ["entry"] = again.Entry.ToString(),
        ["member"] = again.Member,
        ["given"] = again.Given,
        ["taken"] = again.Taken,
        ["nearest"] = Texts(again.Nearest),
        ["words"] = again.Words,
        ["place"] = again.Place?.ToString(),
        ["bars_issue"] = again.Bars,
        ["settled"] = again.Settled,
    };

    public static JsonObject Write(HeldLine line, Tongue words) => new()
    {
        ["line"] = line.Name?.ToString(),
        ["sha256"] = line.Hash,
        ["reasons"] = Texts(line.Why.Select(why => why.In(words))),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)JsonValue.Create(text))]);
}
