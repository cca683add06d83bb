using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace Purlin.Journal;

/// <summary>Puts the members of a body into the form that its type has, as far as what was written is plain.</summary>
internal sealed class MemberMending
{
    private const string Nothing = "nothing";
    private static readonly string[] Yes = ["true", "yes", "y", "1"];
    private static readonly string[] No = ["false", "no", "n", "0"];

    /// <summary>What was taken otherwise or left out.</summary>
    public List<Misread> Misread { get; } = [];

    /// <summary>What must be there and cannot be read.</summary>
    public List<Refusal> Refusals { get; } = [];

    /// <summary>Words as a closed list has them: lower case, single spaces.</summary>
    public static string Plain(string text) => string.Join(' ', text.ToLowerInvariant().Split([' ', '_', '-', '\t'],
        StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Whether a body has a member that its type does not have, however deep.</summary>
    public static bool HasStray(JsonElement body, JsonTypeInfo form) => form.Kind switch
    {
        JsonTypeInfoKind.Object when body.ValueKind == JsonValueKind.Object => body.EnumerateObject().Any(member =>
            Of(form, member.Name) is not { } known || HasStray(member.Value, FormOf(known))),
        JsonTypeInfoKind.Enumerable when body.ValueKind == JsonValueKind.Array => body.EnumerateArray().Any(item =>
            HasStray(item, form.Options.GetTypeInfo(form.ElementType!))),
        _ => false,
    };

    /// <summary>Whether a body without the member cannot be read.</summary>
    public static bool MustBeThere(JsonPropertyInfo property) => property.IsRequired
        || property.AssociatedParameter is { HasDefaultValue: false, IsMemberInitializer: false };

    /// <summary>Says of a member how it was taken.</summary>
    public void Tell(string member, string given, string? taken, IReadOnlyList<string> nearest) => Misread.Add(new Misread(member,
        BodyJson.Short(given), taken, nearest));

    /// <summary>An object in the form of its type; none when something that must be there cannot be read.</summary>
    public JsonObject? Object(JsonElement given, JsonTypeInfo form, string path)
    {
        if (given.ValueKind != JsonValueKind.Object) return null;
        JsonObject made = [];
        foreach (var member in given.EnumerateObject().OrderBy(member => Of(form, member.Name) is null)) Member(made, member, form, path);
        var whole = true;
        foreach (var property in form.Properties)
        {
            if (!MustBeThere(property) || made.ContainsKey(property.Name)) continue;
            if (MemberForms.Instead(property) is { } instead)
            {
                made[property.Name] = instead;
                if (property.Name != "unit") Tell(Below(path, property.Name), Nothing, (string?)instead, []);
                continue;
            }
            whole = false;
            var there = given.TryGetProperty(property.Name, out var value) ? value.GetRawText() : Nothing;
            Refusals.Add(new Refusal(Below(path, property.Name), Said.Verbatim(BodyJson.Short(there)), MemberForms.Wanted(property.PropertyType)));
        }
        return whole ? made : null;
    }

    private void Member(JsonObject made, JsonProperty member, JsonTypeInfo form, string path)
    {
        var property = Of(form, member.Name);
        if (property is null && Meant(form, member.Name, made) is { } meant)
        {
            property = Of(form, meant);
            if (Folded(meant) != Folded(member.Name)) Tell(Below(path, member.Name), member.Name, meant, [meant]);
        }
        if (property is null)
        {
            Tell(Below(path, member.Name), member.Value.GetRawText(), null, []);
            return;
        }
        if (member.Value.ValueKind == JsonValueKind.Null) return;
        var refused = Refusals.Count;
        if (Value(member.Value, FormOf(property), Below(path, property.Name)) is { } value)
        {
            made[property.Name] = value;
            return;
        }
        if (MustBeThere(property)) return;
        Refusals.RemoveRange(refused, Refusals.Count - refused);
        Tell(Below(path, property.Name), member.Value.GetRawText(), null, []);
    }

    private JsonNode? Value(JsonElement given, JsonTypeInfo form, string path)
    {
        var type = Nullable.GetUnderlyingType(form.Type) ?? form.Type;
        if (type == typeof(Amount)) return Amounts(given, form.Options.GetTypeInfo(typeof(Amount)), path);
        if (form.Kind == JsonTypeInfoKind.Object) return Object(given, form.Type == type ? form : form.Options.GetTypeInfo(type), path);
        if (form.Kind == JsonTypeInfoKind.Enumerable) return List(given, form.Options.GetTypeInfo(form.ElementType!), path);
        if (form.Kind == JsonTypeInfoKind.Dictionary || type == typeof(JsonElement)) return JsonNode.Parse(given.GetRawText());
        var text = given.ValueKind switch
        {
            JsonValueKind.String =>
            given.GetString()!,
            JsonValueKind.Object or JsonValueKind.Array or JsonValueKind.Null => null,
            _ => given.GetRawText()
        };
        if (text is null) return null;
        if (type == typeof(FactValue)) return JsonNode.Parse(given.GetRawText());
        if (type == typeof(string)) return text;
        if (type == typeof(bool)) return Yes.Contains(Plain(text)) ? true : No.Contains(Plain(text)) ? false : null;
        if (type == typeof(EntryName)) return EntryName.TryParse(text.Trim(), out var name) ? name.ToString() : null;
        if (type == typeof(DateOnly)) return Day(text, path);
        if (!MemberForms.IsNumber(type)) return JsonNode.Parse(given.GetRawText());
        if (!double.TryParse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            || !double.IsFinite(number)) return null;
        if (type == typeof(double)) return number;
        return number == Math.Floor(number) && Math.Abs(number) < long.MaxValue ? (long)number : null;
    }

    /// <summary>A number with its unit; <c>"105 psi"</c> and a bare number are one too.</summary>
    private JsonObject? Amounts(JsonElement given, JsonTypeInfo form, string path)
    {
        if (given.ValueKind == JsonValueKind.Object) return Object(given, form, path);
        var text = given.ValueKind switch
        {
            JsonValueKind.String => given.GetString()!.Trim(),
            JsonValueKind.Number =>
            given.GetRawText(),
            _ => ""
        };
        var end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or '-' or '+')) end++;
        return double.TryParse(text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && double.IsFinite(number)
            ? new JsonObject { ["value"] = number, ["unit"] = text[end..].Trim() } : null;
    }

    /// <summary>A list; one thing alone is a list of it, and what cannot be read is left out of it.</summary>
    private JsonArray List(JsonElement given, JsonTypeInfo element, string path)
    {
        JsonArray made = [];
        var at = 0;
        foreach (var item in given.ValueKind == JsonValueKind.Array ? given.EnumerateArray().ToArray() : [given])
        {
            var refused = Refusals.Count;
            var where = $"{path}[{at++}]";
            if (Value(item, element, where) is { } value)
            {
                made.Add(value);
                continue;
            }
            Refusals.RemoveRange(refused, Refusals.Count - refused);
            Tell(where, item.GetRawText(), null, []);
        }
        return made;
    }

    /// <summary>A day, also with a time behind it, or written month, day, year as the country does.</summary>
    private JsonValue? Day(string text, string path)
    {
        const string Form = "yyyy-MM-dd";
        var trimmed = text.Trim();
        if (DateOnly.TryParseExact(trimmed, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out _)) return JsonValue
            .Create(trimmed);
        if (!DateOnly.TryParseExact(trimmed, ["M/d/yyyy", "MM/dd/yyyy", "yyyy/M/d", "MMMM d, yyyy", "MMM d, yyyy"],
            CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            && !(trimmed.Length > Form.Length && DateOnly.TryParseExact(trimmed[..Form.Length], Form, CultureInfo.InvariantCulture,
                DateTimeStyles.None, out day))) return null;
        var taken = day.ToString(Form, CultureInfo.InvariantCulture);
        Tell(path, text, taken, []);
        return JsonValue.Create(taken);
    }

    /// <summary>The member that a name with another case, a line or a slip in it plainly means.</summary>
    private static string? Meant(JsonTypeInfo form, string given, JsonObject made)
    {
        var free = form.Properties.Where(property => IsRead(property) && !made.ContainsKey(property.Name)).Select(property =>
            property.Name).ToList();
        if (free.Find(name => Folded(name) == Folded(given)) is { } same) return same;
        const int Shortest = 5;
        return given.Length >= Shortest && Nearest.Ranked(given, free) is [(var word, 1), ..] ? word : null;
    }

    private static string Folded(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static JsonPropertyInfo? Of(JsonTypeInfo form, string name) => form.Properties.FirstOrDefault(property => property.Name == name
        && IsRead(property));

    private static bool IsRead(JsonPropertyInfo property) => property.Set is not null || property.AssociatedParameter is not null;

    private static JsonTypeInfo FormOf(JsonPropertyInfo property) => property.Options.GetTypeInfo(property.PropertyType);

    private static string Below(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";
}
