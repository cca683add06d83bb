using Purlin.Journal;

namespace Purlin.Judgement;

/// <summary>
/// The name of a loose end: the condition that asks, which of its questions, and the thing it is asked about where several alike are told apart.
/// Written <c>water-heater.stains/other-joints</c>, <c>window.fogged/others@k3f9.21</c>.
/// </summary>
/// <param name="Condition">Id of the condition that asks.</param>
/// <param name="Follow">Id of its question.</param>
/// <param name="Of">The component; none for the first or only one.</param>
public readonly record struct LooseEndId(string Condition, string Follow, EntryName? Of = null)
{
    /// <summary>Reads what <see cref="ToString"/> wrote.</summary>
    /// <exception cref="FormatException">The text names no question.</exception>
    public static LooseEndId Parse(string text)
    {
        var told = FindingId.Parse(text);
        return told.Condition.Split('/', 2) is [{ Length: > 0 } condition, { Length: > 0 } follow]
            ? new LooseEndId(condition, follow, told.Of)
            : throw new FormatException($"'{text}' is not a loose end like water-heater.stains/other-joints");
    }

    /// <inheritdoc/>
    public override string ToString() => new FindingId($"{Condition}/{Follow}", Of).ToString();
}
