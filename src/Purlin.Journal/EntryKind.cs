using System.Text.Json.Serialization.Metadata;
using Purlin.Journal.Fold;

namespace Purlin.Journal;

/// <summary>What there is to know of a kind of entry apart from any one entry.</summary>
internal sealed class EntryKind
{
    private readonly Lazy<JsonTypeInfo> json;

    private EntryKind(string type, Type body, IReadOnlyList<Gathered> touches)
    {
        (Type, Body, Touches) = (type, body, touches);
        json = new Lazy<JsonTypeInfo>(() => BodyJson.Options.GetTypeInfo(body));
    }

    /// <summary>The type as written in the envelope.</summary>
    public string Type { get; }

    /// <summary>The case of <see cref="EntryBody"/>.</summary>
    public Type Body { get; }

    /// <summary>How it is read and written.</summary>
    public JsonTypeInfo Json => json.Value;

    /// <summary>Whether a line of this kind folds everything anew: rare, and a part of more than lists.</summary>
    public bool FoldsAnew { get; private init; }

    /// <summary>Whether a reader of plates, words or files may offer such an entry.</summary>
    public bool CanBeProposed { get; private init; }

    /// <summary>The lists of the inspection that hold such a line or rest on it.</summary>
    public IReadOnlyList<Gathered> Touches { get; }

    /// <summary>A kind of evidence, whose lines have a part in these lists and nothing else.</summary>
    public static EntryKind Of<TBody>(string type, params IReadOnlyList<Gathered> touches)
        where TBody : EntryBody => new(type, typeof(TBody), touches) { CanBeProposed = true };

    /// <summary>A kind that is the inspector's own act and is never offered by a reader.</summary>
    public static EntryKind ByHand<TBody>(string type, params IReadOnlyList<Gathered> touches)
        where TBody : EntryBody => new(type, typeof(TBody), touches);

    /// <summary>A kind so rare that everything may be folded anew for it.</summary>
    public static EntryKind Rare<TBody>(string type, params IReadOnlyList<Gathered> touches)
        where TBody : EntryBody => new(type, typeof(TBody), touches) { FoldsAnew = true };
}
