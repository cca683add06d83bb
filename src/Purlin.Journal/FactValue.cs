using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Purlin.Journal;

/// <summary>The value of a fact: words, a number, or yes/no, as it was written.</summary>
[JsonConverter(typeof(FactValueConverter))]
public readonly record struct FactValue
{
    private FactValue(string text, double? number, bool? flag)
    {
        Text = text;
        Number = number;
        Flag = flag;
    }

    /// <summary>The value as words: always there.</summary>
    public string Text { get => field ?? ""; }

    /// <summary>The value as a number, when it was written as one.</summary>
    public double? Number { get; }

    /// <summary>The value as yes or no, when it was written so.</summary>
    public bool? Flag { get; }

    /// <summary>Words.</summary>
    public static FactValue Of(string text) => new(text, null, null);

    /// <summary>A number; must be finite.</summary>
    public static FactValue Of(double number) => double.IsFinite(number)
        ? new(number.ToString("R", CultureInfo.InvariantCulture), number, null)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "a fact's number is finite");

    /// <summary>Yes or no.</summary>
    public static FactValue Of(bool flag) => new(flag ? "yes" : "no", null, flag);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Writes a <see cref="FactValue"/> as a JSON string, number or boolean.</summary>
public sealed class FactValueConverter : JsonConverter<FactValue>
{
    /// <inheritdoc/>
    public override FactValue Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.TokenType switch
    {
        JsonTokenType.String => FactValue.Of(reader.GetString()!),
        JsonTokenType.Number when reader.TryGetDouble(out var number) && double.IsFinite(number) => FactValue.Of(number),
        JsonTokenType.True => FactValue.Of(true),
        JsonTokenType.False => FactValue.Of(false),
        _ => throw new JsonException("a fact's value is text, a finite number, true or false"),
    };

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, FactValue value, JsonSerializerOptions options)
    {
        if (value.Number is { } number) writer.WriteNumberValue(number);
        else if (value.Flag is { } flag) writer.WriteBooleanValue(flag);
        else writer.WriteStringValue(value.Text);
    }
}
