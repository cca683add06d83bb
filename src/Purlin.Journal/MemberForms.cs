using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace Purlin.Journal;

/// <summary>What a member of a body may be, for the sentence that asks for it, and what stands for one that was not written.</summary>
internal static class MemberForms
{
    private const string NoAddress = "address not recorded";

    /// <summary>
    /// What stands where nothing was written, though something must: a number needs no unit, and how a thing is known is not guessed for
    /// the better.
    /// </summary>
    public static JsonValue? Instead(JsonPropertyInfo property) => (property.DeclaringType.Name, property.Name) switch
    {
        (nameof(Amount), "unit") => JsonValue.Create(""),
        (nameof(Property), "address") => JsonValue.Create(NoAddress),
        (_, "basis") => JsonValue.Create(Basis.Presumed),
        _ => null,
    };

    /// <summary>What is wanted of a member, in words.</summary>
    public static Said Wanted(Type type) => (Nullable.GetUnderlyingType(type) ?? type) switch
    {
        var one when one == typeof(EntryName) => "wanted.entry",
        var one when one == typeof(Amount) => "wanted.amount",
        var one when one == typeof(FactValue) => "wanted.fact",
        var one when one == typeof(DateOnly) => "wanted.day",
        var one when one == typeof(bool) => "wanted.flag",
        var one when IsNumber(one) => "wanted.number",
        var one when one == typeof(string) => "wanted.words",
        _ => "wanted.schema",
    };

    /// <summary>Whether it is a number.</summary>
    public static bool IsNumber(Type type) => type == typeof(int) || type == typeof(long) || type == typeof(double);
}
