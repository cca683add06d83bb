using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace Purlin.Journal;

/// <summary>
/// Reads a body that was not written quite as the schema has it: takes what is plainly meant (<c>"2"</c> for 2, <c>yes</c> for true,
/// another case),
/// leaves out a member that may be missing and cannot be read, and says so. Evidence is lost only when what must be there cannot be read.
/// </summary>
internal static class BodyMending
{
    // Each try mends one member more; a body has no more members that are checked by their words.
    private const int MostTries = 8;
    private const int LongestSlip = 400;

    /// <summary>The body, and what was not taken as it was written.</summary>
    public static Checked<EntryBody> Read(string type, JsonElement body, out IReadOnlyList<Misread> misread)
    {
        misread = [];
        if (!EntryKinds.ByType.TryGetValue(type, out var kind))
        {
            misread = [new Misread("type", BodyJson.Short(type), null, Nearest.To(type, BodyJson.Types) is { } near ? [near] : [])];
            return BodyJson.Read(type, body);
        }
        var read = BodyJson.Read(type, body);
        if (body.ValueKind != JsonValueKind.Object || BodyCheck.Values(body) is not null) return read;
        if (read.IsAccepted && !MemberMending.HasStray(body, kind.Json)) return read;
        var mending = new MemberMending();
        if (mending.Object(body, kind.Json, "") is not { } mended) return mending.Refusals.Count > 0
            ? Checked<EntryBody>.Refused(mending.Refusals) : read;
        var again = Retried(type, mended, kind.Json, mending);
        // What the strict reading takes is never made worse.
        if (!again.IsAccepted && read.IsAccepted) return read;
        misread = mending.Misread;
        return again;
    }

    /// <summary>
    /// Words of a closed list are tried in lower case with spaces; a member that may be missing is left out when they are still refused.
    /// </summary>
    private static Checked<EntryBody> Retried(string type, JsonObject body, JsonTypeInfo form, MemberMending mending)
    {
        for (var tries = 0; ; tries++)
        {
            var read = BodyJson.Read(type, JsonElement.Parse(body.ToJsonString()));
            if (read.IsAccepted || tries == MostTries) return read;
            if (!read.Refusals.Any(refusal => Mend(body, refusal, form, mending))) return read;
        }
    }

    private static bool Mend(JsonObject body, Refusal refusal, JsonTypeInfo form, MemberMending mending)
    {
        var name = refusal.Input;
        if (form.Properties.FirstOrDefault(property => property.Name == name) is not { } property
            || body[name] is not { } given) return false;
        if (given is JsonValue value && value.TryGetValue<string>(out var text) && MemberMending.Plain(text) is var plain && plain != text)
        {
            body[name] = plain;
            return true;
        }
        if (name == "basis" && property.IsRequired && (string?)given != Basis.Presumed)
        {
            body[name] = Basis.Presumed;
            mending.Tell(name, given.ToJsonString(), Basis.Presumed, Basis.All);
            return true;
        }
        // What is beyond a limit of size is no slip of the pen, and stays refused.
        if (MemberMending.MustBeThere(property) || given is JsonArray || given.ToJsonString().Length > LongestSlip) return false;
        body.Remove(name);
        mending.Tell(name, given.ToJsonString(), null, []);
        return true;
    }
}
