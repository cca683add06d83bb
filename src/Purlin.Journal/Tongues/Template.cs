using System.Collections.Immutable;
using System.Text;

namespace Purlin.Journal.Tongues;

/// <summary>
/// A sentence with its places, read once. <c>{name}</c> is filled as it comes, <c>{name:0.#}</c> with a number so rounded or a list so
/// joined; <c>{n, plural, one {# bar} other {# bars}}</c> and <c>{kind, select, gas {...} none {} other {...}}</c> choose, as the messages
/// of ICU do. What is no place is text: a brace that somebody typed stays a brace.
/// </summary>
internal sealed class Template(ImmutableArray<Template.Piece> pieces)
{
    /// <summary>The names of all places, those within choices among them, once each.</summary>
    internal IEnumerable<string> Places => pieces.SelectMany(piece => piece.Places).Distinct(StringComparer.Ordinal);

    internal static Template Read(string sentence) => new TemplateReader(sentence).Whole();

    internal void Write(StringBuilder words, ReadOnlySpan<Filled> with, Tongue tongue)
    {
        foreach (var piece in pieces) piece.Write(words, with, tongue);
    }

    /// <summary>A part of a sentence.</summary>
    internal abstract record Piece
    {
        internal virtual IEnumerable<string> Places => [];

        internal abstract void Write(StringBuilder words, ReadOnlySpan<Filled> with, Tongue tongue);

        private protected static SaidValue? Value(string name, ReadOnlySpan<Filled> with)
        {
            foreach (var filled in with)
                if (filled.Name == name) return filled.Value;
            return null;
        }
    }

    /// <summary>Text that stands as it is.</summary>
    internal sealed record Plain(string Text) : Piece
    {
        internal override void Write(StringBuilder words, ReadOnlySpan<Filled> with, Tongue tongue) => words.Append(Text);
    }

    /// <summary>A place that a value fills; one that nothing fills is shown as it is written.</summary>
    internal sealed record Place(string Name, string Format, string Written) : Piece
    {
        internal override IEnumerable<string> Places => [Name];

        internal override void Write(StringBuilder words, ReadOnlySpan<Filled> with, Tongue tongue)
        {
            if (Value(Name, with) is { } value) tongue.Rules.Write(words, value, Format, tongue);
            else words.Append(Written);
        }
    }

    /// <summary>A choice by the number of a value, or by what it is.</summary>
    internal sealed record Choice(string Name, bool ByNumber, ImmutableArray<(string When, Template Then)> Cases) : Piece
    {
        internal override IEnumerable<string> Places => Cases.SelectMany(one => one.Then.Places).Prepend(Name);

        internal override void Write(StringBuilder words, ReadOnlySpan<Filled> with, Tongue tongue)
        {
            var value = Value(Name, with);
            var wanted = ByNumber ? tongue.Rules.PluralOf(value) : [Is(value)];
            foreach (var when in (string[])[.. wanted, "other"])
                foreach (var (name, then) in Cases)
                    if (name == when)
                    {
                        then.Write(words, [.. with, new Filled("#", value ?? new SaidValue.Text(""))], tongue);
                        return;
                    }
        }

        /// <summary>Nothing, an empty text and an empty list are <c>none</c>.</summary>
        private static string Is(SaidValue? value) => value switch
        {
            null or SaidValue.Text { Written.Length: 0 } or SaidValue.List { Values.IsEmpty: true } => "none",
            SaidValue.Text text => text.Written,
            SaidValue.Sentence { Value: { Key.Length: 0, With: [var words, ..] } } => Is(words.Value),
            SaidValue.Sentence { Value.Key: var key } => key,
            _ => value.ToString()!,
        };
    }
}
