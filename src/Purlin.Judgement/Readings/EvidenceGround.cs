using System.Text.Json.Nodes;
using Purlin.Book;
using Purlin.Book.Takings;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Readings;

/// <summary>The evidence as takings ask for it; every question goes through the index, so that what a working rests on is noted.</summary>
internal sealed class EvidenceGround(EvidenceIndex evidence, JudgingMemory memory) : Ground
{
    private static readonly Dictionary<string, string> NoWords = [];

    public override int YearNow => evidence.YearNow;

    public override (Property Property, EntryName Entry)? House =>
        evidence.Property is { } property && evidence.House is { } entry ? (property, entry) : null;

    public override IEnumerable<Component> ComponentsOf(string kind) => evidence.ComponentsOf(kind);

    public override IEnumerable<Reading> ReadingsOf(string kind) => evidence.ReadingsOf(kind);

    public override EntryName? PlaceOf(Reading reading) => evidence.PlaceOf(reading);

    public override bool IsOfHouse(string readingKind) => evidence.Book.IsOfHouse(readingKind);

    public override double? Setting(string name) => Duties.StandardLimits.Strictest(evidence, name);

    public override IReadOnlyDictionary<string, string> Words(string map) => evidence.Book.WordMaps.GetValueOrDefault(map, NoWords);

    public override (JsonObject Result, IReadOnlyList<EntryName> Entries)? Worked(string feed, Component component)
    {
        if (evidence.Book.Feeds.FirstOrDefault(one => one.Id == feed) is not { } its || !its.Components.Contains(component.Kind)) return null;
        var fed = its.Bind(this, new FeedGroup([], component, component.Place));
        return fed.IsWhole && memory.Reckon(its, fed.Inputs) is { IsAccepted: true } reckoned ? (reckoned.OrThrow().Result, fed.Entries) : null;
    }
}
