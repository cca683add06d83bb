using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>Says what becomes of each note and sound note, so that nothing said is silent, and writes those that are matters of their own.</summary>
internal sealed class NoteSpeaking(Inspection inspection, EvidenceIndex evidence)
{
    /// <summary>Every note and sound note, in the order in which they were made.</summary>
    public List<SpokenNote> Speak() =>
    [
        .. inspection.Notes.Select(note => Spoken(note.Id, false, note.Text, note.About, note.Fate)),
        .. inspection.Sounds.Select(sound => Spoken(sound.Id, true, sound.Written, sound.Body.Component ?? sound.Body.Place, sound.Fate)),
    ];

    /// <summary>The findings of those that are matters of their own, in no order of meaning.</summary>
    public IEnumerable<Finding> Matters(IEnumerable<SpokenNote> notes)
    {
        var fates = inspection.Notes.Select(note => (note.Id, note.Fate)).Concat(inspection.Sounds.Select(sound => (sound.Id, sound.Fate)))
            .Where(pair => pair.Fate is not null).ToDictionary(pair => pair.Id, pair => pair.Fate!.Value);
        return notes.Where(note => note.Finding is not null).Select(note => Matter(note, fates[note.Id]));
    }

    private SpokenNote Spoken(EntryName id, bool isSound, Slot<string>? text, EntryName? about, Slot<EntryBody.NoteFated>? slot)
    {
        var fate = slot?.Value;
        var said = fate?.Text is { Length: > 0 } own ? own : string.Join('\n', text?.Standing.Select(stated => stated.Value.Trim()) ?? []);
        return new SpokenNote(id, isSound, said)
        {
            Fate = fate?.How,
            Finding = fate?.How == Fate.Matter ? FindingId.OfNote(id) : null,
            Under = fate?.How == Fate.Under ? fate.Under : null,
            Reason = fate?.How == Fate.KeptOut ? fate.Reason : null,
            About = about,
            Place = PlaceOf(about),
        };
    }

    private EntryName? PlaceOf(EntryName? about) => evidence.Place(about)?.Id ?? evidence.Component(about)?.Place
        ?? inspection.Observations.FirstOrDefault(one => one.Id == about)?.Body.Place
        ?? inspection.Readings.FirstOrDefault(one => one.Id == about)?.Body.Place
        ?? inspection.Limitations.FirstOrDefault(one => one.Id == about)?.Body.Place
        ?? inspection.Photos.FirstOrDefault(one => one.Id == about)?.Place;

    private Finding Matter(SpokenNote note, EntryBody.NoteFated fate)
    {
        var words = evidence.Book.Words;
        var under = fate.Under ?? note.About;
        var component = evidence.Component(under) is { Kind: not "house" } thing ? thing : null;
        var place = PlaceOf(under);
        var weight = WordTable.Read<Weight>(fate.Weight) ?? Weight.PutRight;
        return new Finding
        {
            Id = note.Finding!.Value,
            Condition = FindingId.Own,
            System = Gathering.SystemOf(evidence, component?.Kind ?? "", place),
            Title = FindingWriting.Sentence(fate.Title ?? note.Text, stop: false),
            Weight = weight,
            Why = [new Contribution(Speaks.Inspector, words.Say("note.weight"), weight)],
            Spread = Spread.OnePlace,
            Places = place is { } at ? [at] : [],
            Components = component is null ? [] : [component.Id],
            ComponentKind = component?.Kind ?? "",
            Evidence = [note.Id],
            Photos = evidence.PhotosFor(note.Id),
            Where = place is null ? words.Say("where.house") : evidence.NameOf(place),
            Observed = FindingWriting.Sentence(note.Text.Length > 0 ? note.Text : fate.Title ?? "", stop: true),
            Matters = words.Say("own.means"),
            Do = fate.Recommendation is { Length: > 0 } todo ? todo : words.Say("own.do"),
            Trade = fate.Trade is { Length: > 0 } trade ? trade : "general contractor",
        };
    }
}
