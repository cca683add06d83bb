using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Report.Section;

/// <summary>The facts of a house that give it its outline. What is not known is drawn as the most common form and said nowhere as a fact.</summary>
internal sealed record HouseShape(int Storeys, string Foundation, bool FoundationKnown, string RoofForm, double Pitch, string Garage, bool Chimney, bool AtticFinished, string? Facing)
{
    public static HouseShape Of(Inspection inspection)
    {
        var property = inspection.Opening?.Body.Property;
        var below = inspection.Places.Any(place => place.Kind == PlaceKind.Basement) ? "basement"
            : inspection.Places.Any(place => place.Kind == PlaceKind.CrawlSpace) ? "crawl space" : "slab";
        var highest = inspection.Places.Where(place => place.Storey is > 0).Select(place => place.Storey!.Value).DefaultIfEmpty(0).Max();
        var pitch = property?.RoofPitch is { } written && double.IsFinite(written) ? Math.Clamp(written, 0, 24) : 6;
        return new HouseShape(
            Math.Clamp(Math.Max(property?.Storeys ?? 1, highest + 1), 1, 6),
            property?.Foundation is "slab" or "crawl space" or "basement" or "piers" ? property.Foundation : below,
            property?.Foundation is not null,
            property?.RoofForm is "gable" or "hip" or "flat" or "shed" or "gambrel" ? property.RoofForm : "gable",
            pitch,
            property?.Garage ?? "none",
            property?.Chimney == true,
            property?.Attic == "finished",
            property?.Facing);
    }
}
