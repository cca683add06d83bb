using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Report.Fonts;

namespace Purlin.Report.Writing;

/// <summary>Numbers photographs in the order in which the report shows them, each shown once.</summary>
internal sealed class PictureNumbers(Record record)
{
    private readonly Dictionary<EntryName, Photo> photos = record.Inspection.Photos.ToDictionary(photo => photo.Id);
    private readonly Dictionary<EntryName, Picture> numbered = [];
    private readonly List<Picture> shown = [];

    public IReadOnlyList<Picture> Shown => shown;

    public bool IsShown(EntryName photo) => numbered.ContainsKey(photo);

    public int NumberOf(EntryName photo) => numbered[photo].Number;

    /// <summary>A photograph with the number it has or would have next; none when it is not there.</summary>
    public Picture? Of(EntryName name) => numbered.GetValueOrDefault(name) ?? (Show([name]) is [var shown, ..] ? shown : null);

    /// <summary>The photographs of these that exist, are not held back and have not been shown before.</summary>
    public IReadOnlyList<Picture> Show(IEnumerable<EntryName> names, string about = "")
    {
        List<Picture> now = [];
        foreach (var name in names)
        {
            if (numbered.ContainsKey(name) || !photos.TryGetValue(name, out var photo) || photo.Use == PhotoUse.HeldBack) continue;
            var caption = Caption(photo, about);
            Picture picture = new() { Id = name, Number = shown.Count + 1, Sha = photo.Body.Sha, Caption = caption, Alt = Alt(photo, caption) };
            numbered[name] = picture;
            shown.Add(picture);
            now.Add(picture);
        }
        return now;
    }

    private string Caption(Photo photo, string about)
    {
        var spoken = record.Judged.Photos.FirstOrDefault(candidate => candidate.Id == photo.Id)?.Caption ?? photo.Caption;
        if (!string.IsNullOrWhiteSpace(spoken)) return Phrase.End(Typesetting.Clean(spoken));
        if (about.Length > 0) return Phrase.End(about);
        var of = record.ComponentName(photo.Component);
        var place = record.PlaceName(photo.Place);
        return Phrase.End(Phrase.Sentence((of.Length, place.Length) switch { ( > 0, > 0) => $"{of}, {place}", ( > 0, _) => of, (_, > 0) => place, _ => record.Words.Say("report.photograph.visit") }));
    }

    private string Alt(Photo photo, string caption) => record.PlaceName(photo.Place) is { Length: > 0 } place && !caption.Contains(place, StringComparison.OrdinalIgnoreCase)
        ? record.Words.Say("report.photograph.alt.place", ("place", place), ("caption", caption))
        : record.Words.Say("report.photograph.alt", ("caption", caption));
}
