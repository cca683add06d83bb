using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Purlin.Journal;

namespace Purlin.Reckoning;

/// <summary>
/// One calculation of the trade: one block defines it, and its help, its row in the list, its checks of input and its page in the
/// documents come from that block.
/// </summary>
public sealed record Calculation
{
    /// <summary>Its name in the command line, in journals and in the rule book: lower case, hyphens.</summary>
    public required string Name { get; init; }

    /// <summary>Its heading in a printed working, the sentence <c>NAME.title</c>.</summary>
    public Said Title => new($"{Name}.title");

    /// <summary>One line on what it is for, the sentence <c>NAME.purpose</c>.</summary>
    public Said Purpose => new($"{Name}.purpose");

    /// <summary>What goes in, in the order a person would ask.</summary>
    public required ImmutableArray<Input> Inputs { get; init; }

    /// <summary>What it rests on: document, section, edition.</summary>
    public required ImmutableArray<string> Sources { get; init; }

    /// <summary>
    /// The calculation over checked inputs. Refusals that only show in combination (wet bulb above dry bulb) come back as such.
    /// </summary>
    public required Func<Given, Checked<Working>> Work { get; init; }

    /// <summary>Checks every input against its block, then reckons.</summary>
    public Checked<Working> Reckon(JsonObject input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return Given.Check(this, input).Match(given => Work(given), refusals => Checked<Working>.Refused(refusals));
    }
}
