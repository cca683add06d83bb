using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Purlin.Book;
using Purlin.Journal;

namespace Purlin.Tests.Book;

/// <summary>
/// Makes a JSON Schema from the very types that a file of the rule book is read into, with what the documentation says of each member, so that
/// an editor completes and explains it. Nothing is written twice: a member that is added to a type is in the schema when it is made again.
/// </summary>
internal sealed class SchemaOfBook
{
    private static readonly XDocument Said = XDocument.Load(Path.ChangeExtension(typeof(RuleBook).Assembly.Location, ".xml"));

    /// <summary>Words that must come from a closed list, by type and member.</summary>
    private static readonly Dictionary<(Type, string), IReadOnlyList<string>> Closed = new()
    {
        [(typeof(Condition), "trade")] = Trades.All,
        [(typeof(Follow), "trade")] = Trades.All,
        [(typeof(CauseRule), "trade")] = Trades.All,
        [(typeof(Condition), "places")] = PlaceKind.All,
        [(typeof(Follow), "in")] = PlaceKind.All,
        [(typeof(ReadingKind), "places")] = PlaceKind.All,
        [(typeof(Feed), "places")] = PlaceKind.All,
        [(typeof(Raise), "in")] = PlaceKind.All,
        [(typeof(FactSheet), "places")] = PlaceKind.All,
        [(typeof(LimitationRule), "places")] = PlaceKind.All,
        [(typeof(CoreDuty), "places")] = PlaceKind.All,
        [(typeof(SettingRule), "places")] = PlaceKind.All,
        [(typeof(ByWhenRule), "trades")] = Trades.All,
    };

    /// <summary>Lists whose lines are read one by one, so that one bad line does not spoil its file: what the lines are.</summary>
    private static readonly Dictionary<(Type, string), JsonTypeInfo> Lines = new()
    {
        [(typeof(ConditionFile), "conditions")] = BookJson.Default.Condition,
        [(typeof(ReadingFile), "kinds")] = BookJson.Default.ReadingKind,
        [(typeof(ReadingFile), "feeds")] = BookJson.Default.Feed,
        [(typeof(ReadingFile), "facts")] = BookJson.Default.FactRule,
        [(typeof(ReadingFile), "sheets")] = BookJson.Default.FactSheet,
        [(typeof(CauseFile), "causes")] = BookJson.Default.CauseRule,
        [(typeof(CauseFile), "escalations")] = BookJson.Default.Escalation,
        [(typeof(CoreFile), "core")] = BookJson.Default.CoreDuty,
        [(typeof(VisitFile), "visit")] = BookJson.Default.VisitRule,
        [(typeof(SettingFile), "settings")] = BookJson.Default.SettingRule,
    };

    /// <summary>Members that a condition gets from its file and does not write itself.</summary>
    private static readonly HashSet<(Type, string)> FromTheFile = [(typeof(Condition), "component"), (typeof(Condition), "system"), (typeof(Condition), "own")];

    private readonly SortedDictionary<string, JsonNode> definitions = new(StringComparer.Ordinal);

    /// <summary>Every schema by the name of its file, without <c>.schema.json</c>.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new SortedDictionary<string, string>(StringComparer.Ordinal)
    {
        ["by-when"] = Text("By when a matter wants doing: the first line that fits decides", schema => schema.ListOf("by-when", BookJson.Default.ByWhenRule)),
        ["causes"] = Text("A file of causes and escalations", schema => schema.Of(BookJson.Default.CauseFile)),
        ["conditions"] = Text("A file of conditions", schema => schema.Of(BookJson.Default.ConditionFile)),
        ["core"] = Text("The common core of all standards", schema => schema.Of(BookJson.Default.CoreFile)),
        ["duties"] = Text("A standard of practice", schema => schema.Of(BookJson.Default.Standard)),
        ["edition"] = Text("Which rule book this is", schema => schema.Of(BookJson.Default.BookEdition)),
        ["hearing"] = Text("Words by what they stand for in talk", schema => Members(schema.Of(BookJson.Default.StringArray))),
        ["limitations"] = Text("A file of limitations", schema => schema.ListOf("limitations", BookJson.Default.LimitationRule)),
        ["looking"] = Text("A file that says what to look at first", schema => schema.Of(BookJson.Default.LookingFile)),
        ["profiles"] = Text("A file of profiles", schema => schema.ListOf("profiles", BookJson.Default.Profile)),
        ["readings"] = Text("A file of kinds of reading, feeds, facts, sheets and maps of words", schema => schema.Of(BookJson.Default.ReadingFile)),
        ["settings"] = Text("The settings that standards may have", schema => schema.Of(BookJson.Default.SettingFile)),
        ["sources"] = Text("A file of sources", schema => Members(schema.Of(BookJson.Default.SourceLine))),
        ["synonyms"] = Text("A file of what inspectors write", schema => schema.ListOf("synonyms", BookJson.Default.Synonym)),
        ["list"] = Text("A list of words", schema => schema.Of(BookJson.Default.StringArray)),
        ["visit"] = Text("The duties around the visit", schema => schema.Of(BookJson.Default.VisitFile)),
        ["words"] = Text("Sentences by their keys", _ => Members(new JsonObject { ["type"] = "string" })),
    };

    /// <summary>Name of the schema that a file of the book keeps to.</summary>
    public static string NameFor(string path) => path.Split('/') switch
    {
        [_, _] => "edition",
        [_, "duties", "core.json"] => "core",
        [_, "duties", "visit.json"] => "visit",
        [_, "duties", "settings.json"] => "settings",
        [_, "words", "told-apart.json" or "filler.json"] => "list",
        var parts => parts[1],
    };

    private static string Text(string title, Func<SchemaOfBook, JsonNode> of)
    {
        SchemaOfBook schema = new();
        var root = of(schema);
        var whole = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title };
        foreach (var (name, value) in root.AsObject()) whole[name] = value?.DeepClone();
        if (schema.definitions.Count > 0) whole["$defs"] = new JsonObject(schema.definitions.Select(one => KeyValuePair.Create(one.Key, (JsonNode?)one.Value)));
        return whole.ToJsonString(new JsonSerializerOptions { WriteIndented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }) + "\n";
    }

    private static JsonObject Members(JsonNode value) => new() { ["type"] = "object", ["properties"] = new JsonObject { [BookLines.Schema] = new JsonObject { ["type"] = "string" } }, ["additionalProperties"] = value };

    private JsonObject ListOf(string member, JsonTypeInfo line)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = Of(line) };
        var form = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { [BookLines.Schema] = new JsonObject { ["type"] = "string" }, [member] = list.DeepClone() },
            ["required"] = new JsonArray(member),
            ["additionalProperties"] = false,
        };
        return new JsonObject { ["anyOf"] = new JsonArray(list, form) };
    }

    private JsonNode Of(JsonTypeInfo type) => type.PolymorphismOptions is not null || type.Kind == JsonTypeInfoKind.Object ? Defined(type) : type.Kind switch
    {
        JsonTypeInfoKind.Enumerable => new JsonObject { ["type"] = "array", ["items"] = Of(Element(type)) },
        JsonTypeInfoKind.Dictionary => new JsonObject { ["type"] = "object", ["additionalProperties"] = Of(Element(type)) },
        _ => Plain(type),
    };

    private JsonObject Defined(JsonTypeInfo type)
    {
        var name = type.Type.Name;
        if (definitions.TryAdd(name, new JsonObject()))
        {
            definitions[name] = type.PolymorphismOptions is { } cases ? Cases(type, cases) : Object(type, null, null);
        }
        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    /// <summary>One of several forms. The discriminator stands with its list of words beside them, so that an editor offers it before a form is chosen.</summary>
    private JsonObject Cases(JsonTypeInfo type, JsonPolymorphismOptions cases)
    {
        var (member, words) = (cases.TypeDiscriminatorPropertyName, cases.DerivedTypes.Select(one => (JsonNode)$"{one.TypeDiscriminator}"));
        return new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { [member] = new JsonObject { ["enum"] = new JsonArray([.. words]) } },
            ["required"] = new JsonArray(member),
            ["oneOf"] = new JsonArray([.. cases.DerivedTypes.Select(one => Object(type.Options.GetTypeInfo(one.DerivedType), member, $"{one.TypeDiscriminator}"))]),
        };
    }

    private JsonObject Object(JsonTypeInfo type, string? discriminator, string? value)
    {
        JsonObject members = [];
        JsonArray required = [];
        if (discriminator is not null)
        {
            members[discriminator] = new JsonObject { ["const"] = value };
            required.Add(discriminator);
        }
        foreach (var property in type.Properties.Where(property => property.Set is not null || property.AssociatedParameter is not null))
        {
            if (FromTheFile.Contains((type.Type, property.Name))) continue;
            members[property.Name] = Member(type, property);
            if (property.IsRequired) required.Add(property.Name);
        }
        var made = new JsonObject { ["type"] = "object", ["properties"] = members, ["additionalProperties"] = false };
        if (About(type.Type) is { } about) made["description"] = about;
        if (required.Count > 0) made["required"] = required;
        return made;
    }

    private JsonNode Member(JsonTypeInfo type, JsonPropertyInfo property)
    {
        var its = type.Options.GetTypeInfo(property.PropertyType);
        var made = Lines.TryGetValue((type.Type, property.Name), out var line) ? new JsonObject { ["type"] = "array", ["items"] = Of(line) } : Of(its).AsObject();
        if (Closed.TryGetValue((type.Type, property.Name), out var words))
        {
            var one = new JsonObject { ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) };
            made = its.Kind == JsonTypeInfoKind.Enumerable ? new JsonObject { ["type"] = "array", ["items"] = one } : one;
        }
        if (property.IsSetNullable) made = new JsonObject { ["anyOf"] = new JsonArray(made, new JsonObject { ["type"] = "null" }) };
        if (About(type.Type, property.AttributeProvider is System.Reflection.MemberInfo member ? member.Name : property.Name) is { } about) made["description"] = about;
        return made;
    }

    private static JsonObject Plain(JsonTypeInfo read)
    {
        var type = Nullable.GetUnderlyingType(read.Type) ?? read.Type;
        if (type.IsEnum) return new JsonObject { ["enum"] = new JsonArray([.. BookMembers.WordsOf(read.Options.GetTypeInfo(type)).Select(word => (JsonNode)word)]) };
        return type == typeof(string) ? new JsonObject { ["type"] = "string" } : type == typeof(bool) ? new JsonObject { ["type"] = "boolean" }
            : type == typeof(int) ? new JsonObject { ["type"] = "integer" } : type == typeof(double) ? new JsonObject { ["type"] = "number" } : [];
    }

    private static string? About(Type type) => Summary($"T:{Name(type)}");

    /// <summary>A member of a positional record is told by the parameter of its constructor; one of a base type, by that.</summary>
    private static string? About(Type type, string member)
    {
        for (var at = type; at is not null && at != typeof(object); at = at.BaseType)
        {
            var clr = at.GetProperties().FirstOrDefault(property => string.Equals(property.Name, member, StringComparison.OrdinalIgnoreCase))?.Name ?? member;
            if (Summary($"P:{Name(at)}.{clr}") is { } about) return about;
            if (Node($"T:{Name(at)}")?.Elements("param").FirstOrDefault(param => (string?)param.Attribute("name") == clr) is { } param) return Words(param);
        }
        return null;
    }

    private static string? Summary(string id) => Node(id)?.Element("summary") is { } summary ? Words(summary) : null;

    private static XElement? Node(string id) => Said.Descendants("member").FirstOrDefault(member => (string?)member.Attribute("name") == id);

    private static string Words(XElement element) =>
        Regex.Replace(string.Concat(element.Nodes().Select(node => node is XElement { Name.LocalName: "see" } see ? ((string?)see.Attribute("cref"))?.Split('.', ':')[^1] : node is XElement inner ? inner.Value : $"{node}")), @"\s+", " ", RegexOptions.None, TimeSpan.FromSeconds(1)).Trim();

    private static string Name(Type type) => type.FullName!.Replace('+', '.');
    private static JsonTypeInfo Element(JsonTypeInfo type) => type.Options.GetTypeInfo(type.ElementType!);
}
