using CsCheck;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Tests.Journal.Fold;

/// <summary>
/// A simulated visit of three devices, written with real pens. Beside every line it keeps, by itself, what its device had in hand, so that the
/// checks share no reckoning of cause with the fold.
/// </summary>
internal sealed class History
{
    public const string Id = "sim";
    private static readonly DateTimeOffset Start = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    private static readonly long[] Jumps = [0, 0, 0, 1, -90_000, 400_000, 157_680_000_000, -157_680_000_000];

    private readonly bool wildClocks;
    private readonly bool copies;
    private readonly List<Entry>[] hands = [[], [], []];
    private readonly Pen[] pens = [new(Id, "aaa"), new(Id, "bbb"), new(Id, "ccc")];
    private readonly long[] offsets = new long[3];
    private int minute;

    private History(bool wildClocks, bool copies) => (this.wildClocks, this.copies) = (wildClocks, copies);

    /// <summary>Every line, once, in the order of writing.</summary>
    public List<Entry> Entries { get; } = [];

    /// <summary>By hash of a line: hashes of the lines its device had in hand.</summary>
    public Dictionary<string, HashSet<string>> HadInHand { get; } = [];

    public static Gen<Step[]> Steps { get; } =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 124], Gen.Int[0, 999], Gen.Int[0, 999], (device, kind, first, second) => new Step(device, kind, first, second)).Array[1, 45];

    public static History Of(Step[] steps, bool wildClocks = true, bool copies = false)
    {
        var history = new History(wildClocks, copies);
        history.Write(0, new EntryBody.InspectionOpened { Property = new Property { Address = "1 Invented Way" }, Date = new DateOnly(2026, 11, 25) });
        var place = history.Write(0, new EntryBody.PlaceAdded { Kind = PlaceKind.Attic, Name = "Attic" });
        history.Write(0, new EntryBody.ComponentAdded { Kind = "water heater", Place = place.Name });
        history.Pull(1, 0);
        history.Pull(2, 0);
        foreach (var step in steps) history.Take(step);
        return history;
    }

    /// <summary>The entries as a bad signal delivers them: in any order, a third of them twice.</summary>
    public static Entry[] Delivered(IReadOnlyList<Entry> entries, Random chance)
    {
        Entry[] delivered = [.. entries, .. entries.Where(_ => chance.Next(3) == 0)];
        chance.Shuffle(delivered);
        return delivered;
    }

    private void Take(Step step)
    {
        var (device, kind, first, second) = step;
        minute++;
        switch (kind)
        {
            case < 18: Pull(device, first % 3); break;
            case < 26: offsets[device] += Jumps[first % Jumps.Length]; break;
            case < 30 when copies: Copy(device, first); break;
            case < 45: StateFact(device, first, second); break;
            case < 50: WriteNote(device, first, second); break;
            case < 53: SayMyWay(device, first, second); break;
            case < 59: Write(device, new EntryBody.PlaceAdded { Kind = PlaceKind.Room, Name = $"Room {minute}", Parent = Some(Standing<EntryBody.PlaceAdded>(device), first)?.Name }); break;
            case < 68: Move(device, first, second); break;
            case < 74: Observe(device, first); break;
            case < 90: Withdraw(device, first); break;
            case < 100: Restore(device, first); break;
            case < 104: Write(device, new EntryBody.PartAdded { Kind = PartKind.Wing, Name = $"Wing {minute}", Joins = Some(Standing<EntryBody.PartAdded>(device), first)?.Name }); break;
            case < 108: PutInPart(device, first, second); break;
            case < 112: PutTogether(device, first, second); break;
            case < 115: Write(device, new EntryBody.ComponentAbsent { Kind = "window", Place = Some(Standing<EntryBody.PlaceAdded>(device), first)?.Name }); break;
            case < 118: SettleNote(device, first, second); break;
            case < 121: Propose(device, first); break;
            default: Answer(device, first, second); break;
        }
    }

    private void Pull(int to, int from)
    {
        if (to == from) return;
        HashSet<string> here = [.. hands[to].Select(entry => entry.Hash)];
        foreach (var entry in hands[from].Where(entry => here.Add(entry.Hash)))
        {
            hands[to].Add(entry);
            pens[to].Saw(entry, Now(to));
        }
    }

    /// <summary>The profile goes back to an earlier state and writes on: a fork.</summary>
    private void Copy(int device, int first)
    {
        var own = hands[device].FindAll(entry => entry.Name.Device == Name(device));
        if (own.Count < 2) return;
        var keep = 1 + (first % (own.Count - 1));
        hands[device].RemoveAll(entry => entry.Name.Device == Name(device) && entry.Name.Seq > keep);
        pens[device] = Pen.After(Id, Name(device), hands[device], Now(device));
    }

    private void StateFact(int device, int first, int second)
    {
        if (Some(Standing<EntryBody.ComponentAdded>(device), first) is not { } component) return;
        var fact = second % 2 == 0 ? "year" : "material";
        var seen = Folding.Fold(hands[device]).Components.FirstOrDefault(one => one.Id == component.Name)?.Facts.GetValueOrDefault(fact)?.Standing.Select(value => value.By).Order().ToArray() ?? [];
        Write(device, new EntryBody.FactStated { Component = component.Name, Fact = fact, Value = FactValue.Of(1900 + minute), Basis = Basis.Seen, Replaces = seen });
    }

    private void WriteNote(int device, int first, int second)
    {
        var about = Some(Standing<EntryBody.PlaceAdded>(device), first)?.Name;
        var part = second % 2 == 0 ? null : "more";
        var seen = Folding.Fold(hands[device]).Notes.FirstOrDefault(note => note.About == about && note.Part == part)?.Text.Standing.Select(value => value.By).Order().ToArray() ?? [];
        Write(device, new EntryBody.NoteWritten { About = about, Part = part, Text = $"text {minute}", Replaces = seen });
    }

    private void SayMyWay(int device, int first, int second)
    {
        var now = Folding.Fold(hands[device]);
        var id = $"own.x{second % 2}";
        if (first % 2 == 0)
        {
            var seen = now.Wordings.GetValueOrDefault(id + "/do")?.Standing.Select(value => value.By).ToArray() ?? [];
            Write(device, new EntryBody.WordingSaid { Key = id + "/do", Was = "was", Now = $"text {minute}", Replaces = seen });
            return;
        }

        using var condition = System.Text.Json.JsonDocument.Parse($$"""{"name":"text {{minute}}"}""");
        var stands = now.OwnConditions.GetValueOrDefault(id)?.Standing.Select(value => value.By).ToArray() ?? [];
        Write(device, new EntryBody.ConditionWritten { Id = id, Condition = first % 3 == 0 ? null : condition.RootElement.Clone(), Replaces = stands });
    }

    private void Move(int device, int first, int second)
    {
        var places = Standing<EntryBody.PlaceAdded>(device);
        if (Some(places, first) is not { } place) return;
        var seen = hands[device].Where(entry => entry.Body is EntryBody.PlacePlaced placed && placed.Place == place.Name).Select(entry => entry.Name).Distinct().Order().ToArray();
        Write(device, new EntryBody.PlacePlaced { Place = place.Name, Parent = Some(places, second)?.Name, Replaces = seen });
    }

    private void PutInPart(int device, int first, int second)
    {
        if (Some(Standing<EntryBody.PlaceAdded>(device), first) is not { } place || Some(Standing<EntryBody.PartAdded>(device), second) is not { } part) return;
        var state = Folding.Fold(hands[device]);
        Write(device, state.Replacing(new EntryBody.PlacePlaced { Place = place.Name, Part = part.Name, Level = second % 2 / 2.0 }));
        Write(device, Folding.Fold(hands[device]).Replacing(new EntryBody.FactStated { Component = part.Name, Fact = "year", Value = FactValue.Of(1900 + minute), Basis = Basis.Told }));
    }

    /// <summary>Pieces of one another, in rings too.</summary>
    private void PutTogether(int device, int first, int second)
    {
        var components = Standing<EntryBody.ComponentAdded>(device);
        if (components.Count < 3) Write(device, new EntryBody.ComponentAdded { Kind = "panelboard", Of = Some(components, first)?.Name });
        else Write(device, Folding.Fold(hands[device]).Replacing(new EntryBody.ComponentPlaced { Component = Some(components, first)!.Name, Of = Some(components, second)!.Name }));
    }

    private void SettleNote(int device, int first, int second)
    {
        var state = Folding.Fold(hands[device]);
        if (state.Notes.Count == 0) return;
        // By name, as all is chosen here: which of concurrent notes comes first and gives the others its name is a matter of clocks.
        var note = state.Notes.OrderBy(one => one.Text.Standing.Min(by => by.By)).ElementAt(first % state.Notes.Count);
        var fated = note.Fated(second % 2 == 0 ? Fate.KeptOut : Fate.Matter) with { Note = note.Text.Standing.Min(by => by.By) };
        Write(device, state.Replacing(fated with { Title = $"text {minute}", Weight = "put right", Reason = $"reason {minute}" }));
    }

    private void Propose(int device, int first)
    {
        if (Some(Standing<EntryBody.ComponentAdded>(device), first) is not { } component) return;
        var offered = new EntryBody.FactStated { Component = component.Name, Fact = "capacity", Value = FactValue.Of(40), Unit = "gal", Basis = Basis.Nameplate };
        Write(device, new EntryBody.ProposalMade
        {
            Entry = offered.Type,
            Body = System.Text.Json.JsonElement.Parse(BodyJson.Write(offered)),
            From = [new ReadFrom(component.Name)],
            Confidence = 0.5,
        });
    }

    private void Answer(int device, int first, int second)
    {
        if (Some(Standing<EntryBody.ProposalMade>(device), first) is not { } proposal) return;
        if (second % 3 == 0)
        {
            Write(device, new EntryBody.ProposalDropped { Proposal = proposal.Name });
            return;
        }

        var offered = (EntryBody.FactStated)((EntryBody.ProposalMade)proposal.Body).Offered().OrThrow();
        if (second % 3 == 1) offered = offered with { Value = FactValue.Of(50) };
        Write(device, Folding.Fold(hands[device]).Replacing(offered with { Origin = proposal.Name }));
    }

    private void Observe(int device, int first)
    {
        if (Some(Standing<EntryBody.PlaceAdded>(device), first) is not { } place) return;
        Write(device, new EntryBody.ObservationMade { Place = place.Name, Words = $"stain {minute}", Outcome = Outcome.Seen });
    }

    private void Withdraw(int device, int first)
    {
        // The opening stays: without it a history says little.
        if (Some(hands[device].FindAll(entry => entry.Name.Seq > 1), first) is { } target) Write(device, new EntryBody.EntryWithdrawn { Entry = target.Name });
    }

    private void Restore(int device, int first)
    {
        var withdrawn = Folding.Fold(hands[device]).Withdrawn.Order().ToArray();
        if (withdrawn.Length > 0) Write(device, new EntryBody.EntryRestored { Entry = withdrawn[first % withdrawn.Length] });
    }

    private Entry Write(int device, EntryBody body)
    {
        HashSet<string> had = [.. hands[device].Select(entry => entry.Hash)];
        var entry = pens[device].Write(body, Now(device));
        hands[device].Add(entry);
        if (HadInHand.TryAdd(entry.Hash, had)) Entries.Add(entry);
        return entry;
    }

    private DateTimeOffset Now(int device) => Start.AddMinutes(minute).AddMilliseconds(wildClocks ? offsets[device] : 0);

    private List<Entry> Standing<TBody>(int device)
        where TBody : EntryBody
    {
        HashSet<EntryName> withdrawn = [.. Folding.Fold(hands[device]).Withdrawn];
        return hands[device].FindAll(entry => entry.Body is TBody && !withdrawn.Contains(entry.Name));
    }

    /// <summary>One of these, chosen by name: the choice is the same whatever the clocks say.</summary>
    private static Entry? Some(List<Entry> entries, int choice) =>
        entries.Count == 0 ? null : entries.OrderBy(entry => entry.Name).ThenBy(entry => entry.Hash, StringComparer.Ordinal).ElementAt(choice % entries.Count);

    private static string Name(int device) => device switch { 0 => "aaa", 1 => "bbb", _ => "ccc" };
}
