using System.Text.Json.Nodes;

namespace Purlin.Judgement;

/// <summary>Writes a note and what became of it as JSON.</summary>
internal static class NoteJson
{
    public static JsonObject Write(SpokenNote note) => new()
    {
        ["id"] = note.Id.ToString(),
        ["sound"] = note.IsSound,
        ["text"] = note.Text,
        ["fate"] = note.Fate,
        ["finding"] = note.Finding?.ToString(),
        ["under"] = note.Under?.ToString(),
        ["reason"] = note.Reason,
        ["place"] = note.Place?.ToString(),
    };
}
