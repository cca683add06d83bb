using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Journal.Told;

namespace Purlin.Report.Section;

/// <summary>
/// The facts of a part of a house that give it its outline. What is not known is drawn as the most common form and said nowhere as a
/// fact.
/// </summary>
internal sealed record HouseShape(int Storeys, string Foundation, bool FoundationKnown, string RoofForm, double Pitch, string Garage,
    bool Chimney, bool AtticFinished, string? Facing)
{
    // An addition is most often roofed by a lean-to against the wall of the house.
    private const double LeanTo = 3;

    /// <summary>Whether it came on wheels: on a steel frame over piers, with a skirt around them.</summary>
    public bool IsManufactured { get; init; }

    /// <summary>The house as a whole, for what is drawn of it but once.</summary>
    public static HouseShape Of(Inspection inspection) => Of(inspection, inspection.Parts is [var main, ..] ? main : null,
        [.. inspection.Places.Where(place => place.Kind is PlaceKind.Basement or PlaceKind.CrawlSpace)]);

    /// <summary>A part of it; the whole of it where nobody spoke of parts.</summary>
    public static HouseShape Of(Inspection inspection, Journal.Fold.Part? part, IReadOnlyList<Place> below)
    {
        var property = inspection.Opening?.Body.Property;
        var isMain = part is null or { Kind: PartKind.Main };
        var under = below.Any(place => place.Kind == PlaceKind.Basement) ? "basement"
            : below.Any(place => place.Kind == PlaceKind.CrawlSpace) ? PlaceKind.CrawlSpace : "slab";
        var highest = inspection.Places.Where(place => place.Storey is > 0).Select(place => place.Storey!.Value).DefaultIfEmpty(0).Max();
        var foundation = part?.Foundation?.Value.Text ?? (isMain || part!.Kind == PartKind.SecondUnit ? property?.Foundation : null);
        var form = part?.RoofForm?.Value.Text ?? (isMain ? property?.RoofForm : null);
        var isLeanTo = !isMain && form is null && part!.Kind is PartKind.Addition or PartKind.EnclosedPorch;
        var pitch = part?.Fact("roof pitch")?.Value.Number ?? (isMain ? property?.RoofPitch : null);
        return new HouseShape(
            Math.Clamp(Math.Max(property?.Storeys ?? 1, highest + 1), 1, 6),
            foundation is "slab" or PlaceKind.CrawlSpace or "basement" or "piers" ? foundation : under,
            foundation is not null,
            form is "gable" or "hip" or "flat" or "shed" or "gambrel" ? form : isLeanTo ? "shed"
                : property?.RoofForm is "hip" or "flat" or "gambrel" ? property.RoofForm : "gable",
            pitch is { } written && double.IsFinite(written) ? Math.Clamp(written, 0, 24) : isLeanTo ? LeanTo : 6,
            property?.Garage ?? "none",
            isMain && property?.Chimney == true,
            (part?.Fact("attic")?.Value.Text ?? property?.Attic) == "finished",
            property?.Facing)
        {
            IsManufactured = part?.Fact("construction")?.Value.Text == HouseForm.Manufactured,
        };
    }
}
