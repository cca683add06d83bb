using System.Security.Cryptography;
using Purlin.Demo.Pictures;
using Purlin.Journal;

namespace Purlin.Demo;

/// <summary>The pen of the demo: writes what one inspector records on one phone, minute by minute.</summary>
internal sealed class Walk(string inspection, string device, DateTimeOffset start)
{
    private readonly Pen pen = new(inspection, device);
    private readonly List<Entry> entries = [];
    private readonly Dictionary<string, byte[]> pictures = new(StringComparer.Ordinal);
    private DateTimeOffset now = start;

    public IReadOnlyList<Entry> Entries => entries;

    /// <summary>Bytes of every picture by their hash.</summary>
    public IReadOnlyDictionary<string, byte[]> Pictures => pictures;

    public EntryName Write(EntryBody body)
    {
        var entry = pen.Write(body, now);
        entries.Add(entry);
        now += TimeSpan.FromSeconds(21);
        return entry.Name;
    }

    public void Pause(int minutes) => now += TimeSpan.FromMinutes(minutes);

    public EntryName Component(string kind, EntryName? place, string? name = null) =>
        Write(new EntryBody.ComponentAdded { Kind = kind, Place = place, Name = name });

    public void Fact(EntryName component, string fact, FactValue value, string basis, string? unit = null) =>
        Write(new EntryBody.FactStated { Component = component, Fact = fact, Value = value, Unit = unit, Basis = basis });

    public EntryName Seen(EntryName place, string condition, string? words = null, string? spot = null, EntryName? component = null, Sample? sample = null) =>
        Write(new EntryBody.ObservationMade { Place = place, Component = component, Condition = condition, Words = words, Spot = spot, Outcome = Outcome.Seen, Sample = sample });

    public EntryName Clear(EntryName place, string condition, EntryName? component = null, Sample? sample = null, string? words = null) =>
        Write(new EntryBody.ObservationMade { Place = place, Component = component, Condition = condition, Words = words, Outcome = Outcome.Clear, Sample = sample });

    public void Clear(EntryName place, EntryName? component, params ReadOnlySpan<string> conditions)
    {
        foreach (var condition in conditions) Clear(place, condition, component);
    }

    public EntryName NotVisible(EntryName place, string condition, string reason, EntryName? component = null) =>
        Write(new EntryBody.ObservationMade { Place = place, Component = component, Condition = condition, Outcome = Outcome.NotVisible, Reason = reason });

    public EntryName Reading(EntryName place, string kind, double value, string unit, string? instrument = null, EntryName? component = null, string? set = null, string? label = null, PlanPoint? point = null) =>
        Write(new EntryBody.ReadingTaken { Place = place, Kind = kind, Amount = new Amount(value, unit), Instrument = instrument, Component = component, Set = set, Label = label, Point = point });

    /// <summary>A picture taken at a place, for an entry or none; spoken for at once when a use is given.</summary>
    public EntryName Photo(string scene, EntryName place, EntryName? evidence = null, string? use = null, string? caption = null, EntryName? component = null, string? reason = null)
    {
        var bytes = Scene.All.Single(candidate => candidate.Key == scene).Picture();
        var sha = Convert.ToHexStringLower(SHA256.HashData(bytes));
        pictures[sha] = bytes;
        var photo = Write(new EntryBody.PhotoTaken { Sha = sha, Size = bytes.Length, MediaType = "image/jpeg", Width = Sheet.Width, Height = Sheet.Height, Place = place, Component = component, For = evidence });
        if (use is not null) Write(new EntryBody.PhotoPlaced { Photo = photo, Use = use, For = evidence, Place = place, Component = component, Caption = caption, Reason = reason });
        return photo;
    }

    public EntryName Limit(EntryName place, string what, string? cause, string? next, string? rule = null, EntryName? component = null) =>
        Write(new EntryBody.LimitationRecorded { What = what, Cause = cause, Next = next, Place = place, Component = component, Rule = rule });

    /// <summary>A note, and the thing or place under which its words stand in the report.</summary>
    public void Note(EntryName? about, string text, EntryName under)
    {
        var note = Write(new EntryBody.NoteWritten { About = about, Text = text });
        Write(new EntryBody.NoteFated { Note = note, About = about, How = Fate.Under, Under = under });
    }
}
