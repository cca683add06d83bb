namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Photographs.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Photographs with how they are spoken for.</summary>
    public static Gathered Photos { get; } = new((state, inspection) => inspection with
    {
        Photos = state.Each<EntryBody.PhotoTaken, Photo>((line, body) => new Photo
        {
            Id = line.Name,
            Body = body,
            At = line.At,
            Placed = state.Slots.Slot(new SlotKey("photo.placed", line.Name, ""), placed => (EntryBody.PhotoPlaced)placed),
        }),
    });
}

/// <summary>A photograph and how it is spoken for.</summary>
public sealed record Photo
{
    /// <summary>The entry.</summary>
    public required EntryName Id { get; init; }

    /// <summary>What it says.</summary>
    public required EntryBody.PhotoTaken Body { get; init; }

    /// <summary>How it is spoken for; none yet.</summary>
    public Slot<EntryBody.PhotoPlaced>? Placed { get; init; }

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The evidence it belongs to: as placed, else as taken.</summary>
    public EntryName? For => Placed?.Value.For ?? Body.For;

    /// <summary>Where: as placed, else as taken.</summary>
    public EntryName? Place => Placed?.Value.Place ?? Body.Place;

    /// <summary>Of what: as placed, else as taken.</summary>
    public EntryName? Component => Placed?.Value.Component ?? Body.Component;
}
