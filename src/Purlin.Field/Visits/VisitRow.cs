using System.Text.Json.Nodes;
using Purlin.Field.Device;

namespace Purlin.Field.Visits;

/// <summary>An inspection on this phone and what of it is where.</summary>
public sealed record VisitRow(string Id, string Title, string Date, bool Demo, int Photos, int PhotosAtOffice, string Words)
{
    public static async Task<IReadOnlyList<VisitRow>> ReadAsync(Phone phone)
    {
        var list = await phone.JsonAsync("visitList");
        return [.. list!.AsArray().Select(node => Of(node!))];
    }

    private static VisitRow Of(JsonNode node) => new((string)node["insp"]!, (string)node["title"]!, (string)node["date"]!, (bool)node["demo"]!, (int)node["photos"]!, (int)node["photosAtOffice"]!, (string)node["words"]!);
}
