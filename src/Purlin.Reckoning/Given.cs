using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Reckoning.Quantities;

namespace Purlin.Reckoning;

/// <summary>
/// Inputs that were checked against a calculation's block: every one is known, finite and in range, every required one is there.
/// Numbers are read in the default unit of their input.
/// </summary>
public sealed class Given
{
    // A person reads the first few; a hostile object with a million unknown names must not make a million sentences.
    private const int MostRefusals = 20;

    private readonly Dictionary<string, object> values;

    private Given(Dictionary<string, object> values, JsonObject written)
    {
        this.values = values;
        Written = written;
    }

    /// <summary>The inputs as given.</summary>
    public JsonObject Written { get; }

    /// <summary>Whether an optional input was given.</summary>
    public bool Has(string name) => values.ContainsKey(name);

    /// <summary>A quantity or whole number in its default unit; the input must be required or known to be given.</summary>
    public double Number(string name) => values[name] is int whole ? whole : (double)values[name];

    /// <summary>A quantity in its default unit, or none.</summary>
    public double? NumberOrNone(string name) => Has(name) ? Number(name) : null;

    /// <summary>A whole number.</summary>
    public int Whole(string name) => (int)values[name];

    /// <summary>A whole number, or none.</summary>
    public int? WholeOrNone(string name) => Has(name) ? Whole(name) : null;

    /// <summary>A word or text.</summary>
    public string Text(string name) => (string)values[name];

    /// <summary>A word or text, or none.</summary>
    public string? TextOrNone(string name) => Has(name) ? Text(name) : null;

    /// <summary>Yes or no; no when not given.</summary>
    public bool Flag(string name) => values.TryGetValue(name, out var value) && (bool)value;

    /// <summary>A list of objects; empty when not given.</summary>
    public ImmutableArray<Given> List(string name) => values.TryGetValue(name, out var value) ? (ImmutableArray<Given>)value : [];

    /// <summary>A list of bare numbers (an element input without a name); empty when not given.</summary>
    public ImmutableArray<double> Numbers(string name) => [.. List(name).Select(element => element.Number(""))];

    /// <summary>An object, or none.</summary>
    public Given? Group(string name) => values.TryGetValue(name, out var value) ? (Given)value : null;

    internal static Checked<Given> Check(Calculation calculation, JsonObject input)
    {
        List<Refusal> refusals = [];
        var given = Check(calculation.Inputs, input, "", refusals);
        return refusals.Count == 0 ? given : Checked<Given>.Refused(refusals);
    }

    private static Given Check(ImmutableArray<Input> inputs, JsonObject input, string path, List<Refusal> refusals)
    {
        Dictionary<string, object> read = new(StringComparer.Ordinal);
        foreach (var (name, _) in input)
        {
            if (refusals.Count >= MostRefusals) break;
            if (inputs.All(known => known.Name != name))
                refusals.Add(new Refusal(path
                    + Short(name), "refused.unknown", new("allowed.word", ("words", SaidValue.Of(inputs.Select(known => known.Name))))));
        }
        foreach (var known in inputs)
        {
            if (input.TryGetPropertyValue(known.Name, out var node) && node is not null)
                Read(known, node, path + known.Name, read, refusals);
            else if (known.Required) refusals.Add(new Refusal(path + known.Name, "refused.missing", known.Allowed));
        }
        return new Given(read, input);
    }

    private static void Read(Input known, JsonNode node, string path, Dictionary<string, object> into, List<Refusal> refusals)
    {
        object? value = known switch
        {
            Input.Quantity quantity => Quantity(quantity, node),
            Input.Whole whole => Whole(whole, node),
            Input.Choice choice => Word(choice, node),
            Input.Text free => node is JsonValue word && word.TryGetValue<string>(out var text) && text.Length >= 1
                && text.Length <= free.Most ? text : null,
            Input.Flag => node is JsonValue flag && flag.TryGetValue<bool>(out var yes) ? yes : null,
            Input.List list => Elements(list, node, path, refusals),
            Input.Group group => node is JsonObject inner ? Check(group.Of, inner, path + ".", refusals) : null,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        if (value is not null) into[known.Name] = value;
        else refusals.Add(new Refusal(path, AsWritten(node), known.Allowed));
    }

    // A word may look like a number (a conductor of size 12): it may be written as one.
    private static string? Word(Input.Choice choice, JsonNode node)
    {
        if (node is not JsonValue value) return null;
        var text = value.GetValueKind() == JsonValueKind.Number && double.IsFinite(Finite(value))
            ? value.ToJsonString() : value.TryGetValue<string>(out var word) ? word : "";
        if (choice.Plain is not null && text.Length <= 40) text = choice.Plain(text);
        return choice.Words.Contains(text) ? text : null;
    }

    private static object? Quantity(Input.Quantity quantity, JsonNode node)
    {
        if (node is not JsonValue value) return null;
        double number;
        if (value.GetValueKind() == JsonValueKind.Number) number = Finite(value);
        else if (!value.TryGetValue<string>(out var text) || !Units.TryRead(text, quantity.Unit, out number)) return null;
        // 30.48 cm is 12 in, though not to the last binary place: a limit given in another unit is still the limit.
        var rounding = 1e-12 * Math.Max(Math.Abs(quantity.Least), Math.Abs(quantity.Most));
        return double.IsFinite(number) && number >= quantity.Least - rounding && number <= quantity.Most + rounding
            ? Math.Clamp(number, quantity.Least, quantity.Most) : null;
    }

    private static object? Whole(Input.Whole whole, JsonNode node)
    {
        if (node is not JsonValue value || value.GetValueKind() != JsonValueKind.Number) return null;
        var number = Finite(value);
        return double.IsInteger(number) && number >= whole.Least && number <= whole.Most ? (int)number : null;
    }

    // A number made in code may be an int or a decimal; NaN and infinity made in code cannot even be written as JSON.
    private static double Finite(JsonValue value)
    {
        if (value.TryGetValue<double>(out var number)) return number;
        if (value.TryGetValue<float>(out var single)) return single;
        return double.TryParse(value.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture, out number) ? number : double.NaN;
    }

    private static object? Elements(Input.List list, JsonNode node, string path, List<Refusal> refusals)
    {
        if (node is not JsonArray array || array.Count < list.Least || array.Count > list.Most) return null;
        var bare = list.Of.Length == 1 && list.Of[0].Name.Length == 0;
        var elements = ImmutableArray.CreateBuilder<Given>(array.Count);
        for (var index = 0; index < array.Count; index++)
        {
            var at = $"{path}[{index}]";
            if (bare)
            {
                Dictionary<string, object> one = new(StringComparer.Ordinal);
                if (array[index] is { } element) Read(list.Of[0], element, at, one, refusals);
                else refusals.Add(new Refusal(at, "refused.nothing", list.Of[0].Allowed));
                elements.Add(new Given(one, []));
            }
            else if (array[index] is JsonObject inner) elements.Add(Check(list.Of, inner, at + ".", refusals));
            else refusals.Add(new Refusal(at, array[index] is { } other ? AsWritten(other)
                : "refused.nothing", new("allowed.group", ("names", SaidValue.Of(list.Of.Select(input => input.Name))))));
        }
        return elements.ToImmutable();
    }

    private static Said AsWritten(JsonNode node) => node switch
    {
        JsonArray array => new("refused.list", ("count", array.Count)),
        JsonObject => "refused.object",
        JsonValue value when value.TryGetValue<double>(out var number) && !double.IsFinite(number) => "refused.not-finite",
        _ => Said.Verbatim(Short(node.ToJsonString())),
    };

    private static string Short(string text) => text.Length <= 80 ? text : text[..77] + "...";
}
