using System.Buffers;
using System.Text.Json;

namespace Purlin.Journal;

/// <summary>What the shape of a body alone does not say: finite numbers, closed lists of words, hashes, limits.</summary>
internal static class BodyCheck
{
    private static readonly SearchValues<char> OwnLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-");

    /// <summary>The first value no member of ours may hold: a number beyond a double, or nothing inside a list.</summary>
    public static Refusal? Values(JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Number:
                return value.TryGetDouble(out var number) && double.IsFinite(number)
                    ? null
                    : new Refusal("number", BodyJson.Short(value.GetRawText()), "a number a computer can hold");
            case JsonValueKind.Array:
                foreach (var item in value.EnumerateArray())
                {
                    if (item.ValueKind == JsonValueKind.Null) return new Refusal("list", "null", "values only");
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

    /// <summary>Every word, hash and length that is not allowed.</summary>
    public static List<Refusal> Words(EntryBody body)
    {
        List<Refusal> refusals = [];
        if (body is IStated { Replaces.Count: > Limits.NamesInList } stating) Long(refusals, "replaces", stating.Replaces);
        switch (body)
        {
            case EntryBody.ObservationMade made:
                OneOf(refusals, "outcome", made.Outcome, Outcome.All);
                if (made.Sample is { } sample && !(sample.Failed >= 0 && sample.Failed <= sample.Tried && sample.Tried <= sample.Of))
                    refusals.Add(new Refusal("sample", $"{sample.Failed} of {sample.Tried} of {sample.Of}", "failed at most tried, tried at most of"));
                break;
            case EntryBody.FactStated stated:
                OneOf(refusals, "basis", stated.Basis, Basis.All);
                break;
            case EntryBody.PhotoPlaced placed:
                OneOf(refusals, "use", placed.Use, PhotoUse.All);
                break;
            case EntryBody.LooseEndTied tied:
                OneOf(refusals, "how", tied.How, Tie.All);
                if (tied.Evidence.Count > Limits.NamesInList) Long(refusals, "evidence", tied.Evidence);
                break;
            case EntryBody.DutyMet met:
                OneOf(refusals, "how", met.How, DutyClose.All);
                break;
            case EntryBody.NoteWritten note when note.Text.Length > Limits.NoteCharacters:
                refusals.Add(new Refusal("text", $"{note.Text.Length} characters", $"at most {Limits.NoteCharacters}; split the note"));
                break;
            case EntryBody.WordingSaid said:
                Said(refusals, said);
                break;
            case EntryBody.ConditionWritten written:
                Written(refusals, written);
                break;
            case EntryBody.PhotoTaken photo:
                Photo(refusals, photo);
                break;
            case EntryBody.SoundTaken sound:
                Blob(refusals, sound.Sha, sound.Size);
                break;
            case EntryBody.EditionSealed edition:
                foreach (var sha in (string[])[edition.EntriesRoot, edition.Page, edition.Pdf, .. edition.Photos]) Hash(refusals, sha);
                break;
        }

        return refusals;
    }

    private static void Said(List<Refusal> refusals, EntryBody.WordingSaid said)
    {
        if (said.Key.Length is 0 or > 200 || !said.Key.Contains('/', StringComparison.Ordinal)) refusals.Add(new Refusal("key", BodyJson.Short(said.Key), "the key of a sentence, at most 200 characters"));
        if (Math.Max(said.Was.Length, said.Now.Length) > Limits.SentenceCharacters)
            refusals.Add(new Refusal("sentence", $"{Math.Max(said.Was.Length, said.Now.Length)} characters", $"at most {Limits.SentenceCharacters}"));
    }

    private static void Written(List<Refusal> refusals, EntryBody.ConditionWritten written)
    {
        if (!IsOwn(written.Id)) refusals.Add(new Refusal("id", BodyJson.Short(written.Id), "own. and 1 to 60 of a-z, 0-9 and -"));
        if (written.Condition is not { } condition) return;
        if (condition.ValueKind != JsonValueKind.Object) refusals.Add(new Refusal("condition", condition.ValueKind.ToString().ToLowerInvariant(), "an object"));
        else if (condition.GetRawText().Length is var length && length > Limits.ConditionCharacters) refusals.Add(new Refusal("condition", $"{length} characters", $"at most {Limits.ConditionCharacters}"));
    }

    /// <summary>Whether this can be the id of a condition of the inspector's own.</summary>
    private static bool IsOwn(string id) =>
        id.StartsWith("own.", StringComparison.Ordinal) && id.Length is > 4 and <= 64 && id.AsSpan(4).IndexOfAnyExcept(OwnLetters) < 0;

    private static void Photo(List<Refusal> refusals, EntryBody.PhotoTaken photo)
    {
        Blob(refusals, photo.Sha, photo.Size);
        if ((long)(photo.Width ?? 0) * (photo.Height ?? 0) > Limits.PhotoPixels)
            refusals.Add(new Refusal("photograph", $"{photo.Width} x {photo.Height} pixels", $"at most {Limits.PhotoPixels} pixels"));
    }

    private static void Blob(List<Refusal> refusals, string sha, long size)
    {
        Hash(refusals, sha);
        if (size is < 0 or > Limits.PhotoBytes) refusals.Add(new Refusal("size", $"{size} bytes", $"0 to {Limits.PhotoBytes}"));
    }

    private static void Long(List<Refusal> refusals, string member, IReadOnlyList<EntryName> names) =>
        refusals.Add(new Refusal(member, $"{names.Count} names", $"at most {Limits.NamesInList}"));

    private static void Hash(List<Refusal> refusals, string sha)
    {
        if (!Sha.Is(sha)) refusals.Add(new Refusal("hash", BodyJson.Short(sha), "64 digits of 0-9 and a-f"));
    }

    private static void OneOf(List<Refusal> refusals, string member, string given, IReadOnlyList<string> allowed)
    {
        if (!allowed.Contains(given)) refusals.Add(new Refusal(member, BodyJson.Short(given), string.Join(", ", allowed)));
    }
}
