using System.Text.Json;

namespace Purlin.Journal;

/// <summary>What the shape of a body alone does not say: finite numbers, closed lists of words, hashes, limits.</summary>
internal sealed class BodyCheck
{
    /// <summary>What was refused, in the order in which it was looked at.</summary>
    public List<Refusal> Refusals { get; } = [];

    /// <summary>The first value no member of ours may hold: a number beyond a double, or nothing inside a list.</summary>
    public static Refusal? Values(JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Number:
                return value.TryGetDouble(out var number) && double.IsFinite(number)
                    ? null
                    : new Refusal("number", Said.Verbatim(BodyJson.Short(value.GetRawText())), "journal.wanted.number-computer-can-hold");
            case JsonValueKind.Array:
                foreach (var item in value.EnumerateArray())
                {
                    if (item.ValueKind == JsonValueKind.Null)
                        return new Refusal("list", "journal.given.null", "journal.wanted.values-only");
                    if (Values(item) is { } odd) return odd;
                }

                return null;
            case JsonValueKind.Object:
                foreach (var member in value.EnumerateObject())
                {
                    if (Values(member.Value) is { } odd) return odd;
                }

                return null;
            default:
                return null;
        }
    }

    /// <summary>A word of a closed list.</summary>
    public void OneOf(string member, string given, IReadOnlyList<string> allowed) =>
        Must(allowed.Contains(given), member, Said.Verbatim(BodyJson.Short(given)), Said.Verbatim(string.Join(", ", allowed)));

    /// <summary>A word of a closed list, or none.</summary>
    public void NoneOrOneOf(string member, string? given, IReadOnlyList<string> allowed)
    {
        if (given is not null) OneOf(member, given, allowed);
    }

    /// <summary>A SHA-256 as it is written.</summary>
    public void Hash(string sha) => Must(Sha.Is(sha), "hash", Said.Verbatim(BodyJson.Short(sha)), "journal.wanted.64-digits-0-9-f");

    /// <summary>A photograph or sound kept by its hash.</summary>
    public void Blob(string sha, long size)
    {
        Hash(sha);
        Must(size is >= 0 and <= Limits.PhotoBytes, "size", new Said("journal.given.count-bytes", ("count", size)),
            new Said("journal.wanted.0-most", ("most", Limits.PhotoBytes)));
    }

    /// <summary>A text of at most so many characters.</summary>
    public void AtMost(string member, string? text, int characters, string advice = "") =>
        Must((text?.Length ?? 0) <= characters, member, new Said("journal.given.count-characters", ("count", $"{text?.Length}")),
        new Said("journal.wanted.most-characters-advice", ("characters", $"{characters}"), ("advice", $"{advice}")));

    /// <summary>A list of names of at most <see cref="Limits.NamesInList"/>.</summary>
    public void List(string member, IReadOnlyCollection<EntryName> names) =>
        Must(names.Count <= Limits.NamesInList, member, new Said("journal.given.count-names", ("count", names.Count)),
        new Said("journal.wanted.most-most", ("most", $"{Limits.NamesInList}")));

    /// <summary>Anything else that must hold.</summary>
    public void Must(bool holds, string input, Said given, Said allowed)
    {
        if (!holds) Refusals.Add(new Refusal(input, given, allowed));
    }
}
