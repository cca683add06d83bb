using System.Text.Json.Nodes;

namespace Purlin.Field.Device;

/// <summary>An inspection on this phone and what of it is where.</summary>
public sealed record VisitRow(string Id, string Title, string Date, bool Demo, int Photos, int PhotosAtOffice, string Words)
{
    /// <summary>Reads a row of the device's list.</summary>
    public static VisitRow Of(JsonNode node) =>
        new((string)node["insp"]!, (string)node["title"]!, (string)node["date"]!, (bool)node["demo"]!, (int)node["photos"]!, (int)node["photosAtOffice"]!, (string)node["words"]!);
}
