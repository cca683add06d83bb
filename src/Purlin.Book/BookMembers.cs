using System.Text.Json;
using Purlin.Journal;
using System.Text.Json.Serialization.Metadata;

namespace Purlin.Book;

/// <summary>Something in a line of the book that is not of the form it should have.</summary>
/// <param name="Where">Path of the member inside the line: <c>look[0].need</c>; empty for the line itself.</param>
/// <param name="Given">What stands there.</param>
/// <param name="Allowed">What may stand there.</param>
internal sealed record WrongMember(string Where, string Given, string Allowed);

/// <summary>Holds JSON against the type it is read into, member by member, so that every slip of the pen is told at once and in words.</summary>
internal static class BookMembers
{
    /// <summary>All that is wrong; empty where the line can be read.</summary>
    public static IEnumerable<WrongMember> Wrong(JsonElement json, JsonTypeInfo type, string where = "")
    {
        if (type.PolymorphismOptions is { } cases) return WrongCase(json, type, cases, where);
        return type.Kind switch
        {
            JsonTypeInfoKind.Object => json.ValueKind == JsonValueKind.Object ? WrongObject(json, type, where, null) : [Not(json, "an object", where)],
            JsonTypeInfoKind.Enumerable => json.ValueKind == JsonValueKind.Array
                ? json.EnumerateArray().SelectMany((element, at) => Wrong(element, Element(type), $"{where}[{at}]"))
                : [Not(json, "a list", where)],
            JsonTypeInfoKind.Dictionary => json.ValueKind == JsonValueKind.Object
                ? json.EnumerateObject().SelectMany(member => Wrong(member.Value, Element(type), Below(where, member.Name)))
                : [Not(json, "an object", where)],
            _ => WrongValue(json, type, where),
        };
    }

    /// <summary>Only the words that a closed list does not have. Members that nobody knows are passed over: a newer program may have written them.</summary>
    public static IEnumerable<WrongMember> WrongWords(JsonElement json, JsonTypeInfo type, string where = "") => (type.Kind, json.ValueKind) switch
    {
        (JsonTypeInfoKind.Object, JsonValueKind.Object) => type.Properties.SelectMany(property => json.TryGetProperty(property.Name, out var value)
            ? WrongWords(value, type.Options.GetTypeInfo(property.PropertyType), Below(where, property.Name)) : []),
        (JsonTypeInfoKind.Enumerable, JsonValueKind.Array) => json.EnumerateArray().SelectMany((element, at) => WrongWords(element, Element(type), $"{where}[{at}]")),
        (JsonTypeInfoKind.None, JsonValueKind.String) when type.Type.IsEnum => WrongValue(json, type, where),
        _ => [],
    };

    private static IEnumerable<WrongMember> WrongCase(JsonElement json, JsonTypeInfo type, JsonPolymorphismOptions cases, string where)
    {
        if (json.ValueKind != JsonValueKind.Object) return [Not(json, "an object", where)];
        var member = cases.TypeDiscriminatorPropertyName;
        string[] known = [.. cases.DerivedTypes.Select(one => $"{one.TypeDiscriminator}").Order(StringComparer.Ordinal)];
        if (!json.TryGetProperty(member, out var name)) return [new WrongMember(where, $"no \"{member}\"", $"\"{member}\": one of {string.Join(", ", known)}")];
        foreach (var one in cases.DerivedTypes)
            if (name.ValueKind == JsonValueKind.String && name.ValueEquals($"{one.TypeDiscriminator}"))
                return WrongObject(json, type.Options.GetTypeInfo(one.DerivedType), where, member);
        return [new WrongMember(Below(where, member), name.ToString(), Nearest.InWords(name.ToString(), known, member))];
    }

    private static IEnumerable<WrongMember> WrongObject(JsonElement json, JsonTypeInfo type, string where, string? discriminator)
    {
        var members = type.Properties.Where(property => property.Set is not null || property.AssociatedParameter is not null).ToDictionary(property => property.Name, StringComparer.Ordinal);
        foreach (var member in json.EnumerateObject())
        {
            if (member.Name == discriminator) continue;
            if (!members.TryGetValue(member.Name, out var known))
            {
                yield return new WrongMember(where, $"member \"{member.Name}\"", Nearest.InWords(member.Name, [.. members.Keys.Where(name => name[0] != '$')], "member"));
                continue;
            }
            var at = Below(where, member.Name);
            if (member.Value.ValueKind == JsonValueKind.Null)
            {
                if (!known.IsSetNullable) yield return new WrongMember(at, "null", "a value, or leave the member out");
                continue;
            }
            foreach (var wrong in Wrong(member.Value, type.Options.GetTypeInfo(known.PropertyType), at)) yield return wrong;
        }
        foreach (var missing in members.Values.Where(property => property.IsRequired && !json.TryGetProperty(property.Name, out _)))
            yield return new WrongMember(where, $"no \"{missing.Name}\"", "it must be there");
    }

    private static IEnumerable<WrongMember> WrongValue(JsonElement json, JsonTypeInfo read, string where)
    {
        var type = Nullable.GetUnderlyingType(read.Type) ?? read.Type;
        if (type.IsEnum)
        {
            var words = WordsOf(read.Options.GetTypeInfo(type));
            if (json.ValueKind != JsonValueKind.String || !words.Contains(json.GetString()!)) yield return new WrongMember(where, json.ToString(), Nearest.InWords(json.ToString(), words, "word"));
            yield break;
        }
        var (fits, wanted) = true switch
        {
            true when type == typeof(string) => (json.ValueKind == JsonValueKind.String, "words in quotation marks"),
            true when type == typeof(bool) => (json.ValueKind is JsonValueKind.True or JsonValueKind.False, "true or false"),
            true when type == typeof(int) => (json.ValueKind == JsonValueKind.Number && json.TryGetInt32(out _), "a whole number"),
            true when type == typeof(double) => (json.ValueKind == JsonValueKind.Number, "a number"),
            _ => (true, ""),
        };
        if (!fits) yield return Not(json, wanted, where);
    }

    /// <summary>The words of a closed list as the book writes them.</summary>
    public static IReadOnlyList<string> WordsOf(JsonTypeInfo type)
    {
        List<string> words = [];
        foreach (var value in Enum.GetValuesAsUnderlyingType(type.Type)) words.Add(JsonSerializer.SerializeToElement(Enum.ToObject(type.Type, value), type).GetString()!);
        return words;
    }

    private static WrongMember Not(JsonElement json, string wanted, string where) => new(where, json.ToString() is { Length: <= 60 } text ? text : json.ValueKind.ToString().ToLowerInvariant(), wanted);

    private static JsonTypeInfo Element(JsonTypeInfo type) => type.Options.GetTypeInfo(type.ElementType!);

    private static string Below(string where, string name) => where.Length == 0 ? name : $"{where}.{name}";
}
