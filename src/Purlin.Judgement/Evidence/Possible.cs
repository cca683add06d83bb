using Purlin.Book.Looking;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Evidence;

/// <summary>
/// Tells looks that say something from those that could find nothing: nobody looks for warped vinyl on a wall known to be brick.
/// </summary>
internal sealed class Possible(EvidenceIndex evidence, ILookup<string, Fit> fits)
{
    /// <summary>Whether the thing that was looked at could have shown the condition at all, as far as its material is on record.</summary>
    public bool Is(Sighting look) => look.Outcome != Outcome.Clear || fits[look.Condition].All(fit => Fits(fit, look));

    private bool Fits(Fit fit, Sighting look)
    {
        var things = Things(fit.Component, look);
        return things.Count == 0 || things.Exists(thing => thing.Fact(fit.Fact) is not { } known || fit.Holds(known.Value.Text))
            || IsClad(fit);
    }

    private List<Component> Things(string kind, Sighting look)
    {
        if (evidence.Component(look.Component) is { } own && own.Kind == kind) return [own];
        var all = evidence.ComponentsOf(kind).ToList();
        return all.FindAll(thing => thing.Place is not null && thing.Place == look.Place) is { Count: > 0 } here ? here : all;
    }

    /// <summary>What the sides are clad with may stand on the parts of the house.</summary>
    private bool IsClad(Fit fit) => fit.Component == Siding && evidence.Parts.Any(part => part.Claddings.Values.Any(slot =>
        slot.Value.Claddings.Any(cladding => fit.Holds(cladding.Material))));

    private const string Siding = "siding";
}
