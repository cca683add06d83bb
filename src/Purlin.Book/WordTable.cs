using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text.Json.Serialization;

namespace Purlin.Book;

/// <summary>
/// The words of closed lists, as the rule book, journals and JSON write them; each stands once, beside the case that it names.
/// </summary>
public static class WordTable
{
    /// <summary>The word of a case.</summary>
    public static string Word<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(this T value)
        where T : struct, Enum =>
            Of<T>.Words.TryGetValue(value, out var word)
                ? word : throw new ArgumentOutOfRangeException(nameof(value), value, "one of the cases");

    /// <summary>The case that a word names; none when it names none.</summary>
    public static T? Read<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(string? word)
        where T : struct, Enum => word is not null && Of<T>.Cases.TryGetValue(word, out var value) ? value : null;

    /// <summary>All words, in the order in which the cases are written.</summary>
    public static IReadOnlyList<string> Words<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>()
        where T : struct, Enum => Of<T>.InOrder;

    private static class Of<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>
        where T : struct, Enum
    {
        private static readonly (T Value, string Word)[] All =
        [
            .. typeof(T).GetFields(BindingFlags.Public | BindingFlags.Static)
                .Select(field => ((T)field.GetValue(null)!, field.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name
                    ?? field.Name)),
        ];

        public static readonly string[] InOrder = [.. All.Select(one => one.Word)];

        public static readonly FrozenDictionary<T, string> Words = All.ToFrozenDictionary(one => one.Value, one => one.Word);

        public static readonly FrozenDictionary<string, T> Cases = All.ToFrozenDictionary(one => one.Word, one => one.Value,
            StringComparer.Ordinal);
    }
}

/// <summary>Reads and writes the cases of a closed list by their words alone: a number names none.</summary>
public sealed class WordConverter<T>() : JsonStringEnumConverter<T>(null, allowIntegerValues: false)
    where T : struct, Enum;
