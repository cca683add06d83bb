using System.Text.Json;

namespace Purlin.Journal.Tongues;

/// <summary>A file of sentences: one JSON object whose members are keys and sentences.</summary>
public static class WordsFile
{
    /// <summary>Keys and sentences in the order of the file; a key that stands twice comes twice.</summary>
    /// <exception cref="JsonException">It is no object of texts.</exception>
    public static IReadOnlyList<KeyValuePair<string, string>> Read(ReadOnlySpan<byte> utf8)
    {
        var json = new Utf8JsonReader(utf8);
        List<KeyValuePair<string, string>> lines = [];
        if (!json.Read() || json.TokenType != JsonTokenType.StartObject) throw new JsonException("a file of sentences is one object");
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            var key = json.GetString()!;
            if (!json.Read() || json.TokenType != JsonTokenType.String) throw new JsonException($"{key}: a sentence is a text");
            lines.Add(new(key, json.GetString()!));
        }
        return lines;
    }
}
