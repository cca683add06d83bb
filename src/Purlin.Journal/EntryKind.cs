using System.Text.Json.Serialization.Metadata;
using Purlin.Journal.Fold;

namespace Purlin.Journal;

/// <summary>What there is to know of a kind of entry apart from any one entry.</summary>
internal sealed class EntryKind
{
    private readonly Lazy<JsonTypeInfo> json;

    private EntryKind(string type, Type body, bool foldsAnew, IReadOnlyList<Gathered> touches)
    {
        (Type, Body, FoldsAnew, Touches) = (type, body, foldsAnew, touches);
        json = new Lazy<JsonTypeInfo>(() => BodyJson.Options.GetTypeInfo(body));
    }

    /// <summary>The type as written in the envelope.</summary>
    public string Type { get; }

    /// <summary>The case of <see cref="EntryBody"/>.</summary>
    public Type Body { get; }

    /// <summary>How it is read and written.</summary>
    public JsonTypeInfo Json => json.Value;

    /// <summary>Whether a line of this kind folds everything anew: rare, and a part of more than lists.</summary>
    public bool FoldsAnew { get; }

    /// <summary>The lists of the inspection that hold such a line or rest on it.</summary>
    public IReadOnlyList<Gathered> Touches { get; }

    /// <summary>A kind whose lines have a part in these lists and nothing else.</summary>
    public static EntryKind Of<TBody>(string type, params IReadOnlyList<Gathered> touches)
        where TBody : EntryBody => new(type, typeof(TBody), foldsAnew: false, touches);

    /// <summary>A kind so rare that everything may be folded anew for it.</summary>
    public static EntryKind Rare<TBody>(string type, params IReadOnlyList<Gathered> touches)
        where TBody : EntryBody => new(type, typeof(TBody), foldsAnew: true, touches);
}
