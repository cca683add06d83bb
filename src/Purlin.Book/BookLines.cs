using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Purlin.Book;

/// <summary>
/// One file of the book while it is read line by line into a draft; what cannot be read is refused there, with file and id named.
/// </summary>
internal sealed class BookLines(BookFile file, BookDraft draft)
{
    /// <summary>The member with which a file tells an editor what form it has; it means nothing here.</summary>
    public const string Schema = "$schema";

    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public string Path => file.Path;

    /// <summary>Name of the file alone: <c>core.json</c>.</summary>
    public string Name => file.Path[(file.Path.LastIndexOf('/') + 1)..];

    /// <summary>Folder under the root; empty for a file that stands in the root itself.</summary>
    public string Folder => file.Path.Split('/') is { Length: > 2 } parts ? parts[1] : "";

    /// <summary>The language that a file of words belongs to; none for words that are no sentences.</summary>
    public string? Language => file.Path.Split('/') is [_, "words", var language, _, ..] ? language : null;

    public string Text() => Encoding.UTF8.GetString(file.Bytes.Span);

    /// <summary>The whole file as one thing; none when it was refused.</summary>
    public T? Whole<T>(JsonTypeInfo<T> type)
        where T : class
    {
        using var document = JsonDocument.Parse(file.Bytes, Lenient);
        return Read(document.RootElement, type, file.Path);
    }

    /// <summary>Every line of a file that is a list, or an object whose one member beside <c>$schema</c> is the list.</summary>
    public void Each<T>(JsonTypeInfo<T> type, Action<T> take)
        where T : class
    {
        using var document = JsonDocument.Parse(file.Bytes, Lenient);
        var root = document.RootElement;
        if (root.ValueKind == JsonValueKind.Object) root = root.EnumerateObject().FirstOrDefault(member => member.Name == Folder).Value;
        if (root.ValueKind == JsonValueKind.Array) Each(root.EnumerateArray(), type, take);
        else draft.Refuse(file.Path, "no list", $"a list, or an object with the member \"{Folder}\" that is one");
    }

    public void Each<T>(IEnumerable<JsonElement>? lines, JsonTypeInfo<T> type, Action<T> take)
        where T : class
    {
        var number = 0;
        foreach (var line in lines ?? [])
        {
            number++;
            if (Read(line, type, $"{file.Path}: {NameOf(line, number)}") is { } rule) take(rule);
        }
    }

    /// <summary>Every member of a file that is an object of lines by their ids.</summary>
    public void EachMember<T>(JsonTypeInfo<T> type, Action<string, T> take)
        where T : class
    {
        foreach (var (id, line) in Whole(BookJson.Default.DictionaryStringJsonElement) ?? [])
            if (id != Schema && Read(line, type, $"{file.Path}: {id}") is { } rule) take(id, rule);
    }

    /// <summary>Takes a line in; one that rests on nothing, or whose id is taken, is left out.</summary>
    /// <param name="into">Where it goes.</param>
    /// <param name="id">Its id.</param>
    /// <param name="rule">The line.</param>
    /// <param name="sources">What it rests on; none where it is a source itself.</param>
    public void Add<T>(Dictionary<string, (T Rule, string Path)> into, string id, T rule, IReadOnlyList<string>? sources)
    {
        if (sources is { Count: 0 }) draft.Refuse($"{Path}: {id}", "no source", "at least one id of a source, or \"common practice\"");
        else if (into.TryGetValue(id, out var first))
            draft.Refuse($"{Path}: {id}", "an id that is taken", $"an id of its own; {first.Path} has this one");
        else into.Add(id, (rule, Path));
    }

    private T? Read<T>(JsonElement line, JsonTypeInfo<T> type, string where)
        where T : class
    {
        var wrong = BookMembers.Wrong(line, type).ToList();
        foreach (var one in wrong) draft.Refuse(one.Where.Length == 0 ? where : $"{where} {one.Where}", one.Given, one.Allowed);
        if (wrong.Count > 0) return null;
        try
        {
            return line.Deserialize(type);
        }
        catch (JsonException refused)
        {
            draft.Refuse(where, refused.Message.Length <= 160
                ? refused.Message : refused.Message[..157] + "...", "the members described in docs/adding-a-condition.md");
            return null;
        }
    }

    /// <summary>What a person finds the line by: its id, or what stands in its place, or its number.</summary>
    private static string NameOf(JsonElement line, int number)
    {
        if (line.ValueKind == JsonValueKind.Object)
            foreach (var member in (string[])["id", "kind", "component"])
                if (line.TryGetProperty(member, out var name) && name.ValueKind == JsonValueKind.String) return name.GetString()!;
        return $"line {number} of its list";
    }
}
