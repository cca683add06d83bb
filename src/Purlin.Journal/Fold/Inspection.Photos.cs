namespace Purlin.Journal.Fold;

public sealed partial record Inspection
{
    /// <summary>Photographs.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];
}

internal sealed partial class Gathered
{
    /// <summary>Photographs with how they are spoken for.</summary>
    public static Gathered Photos { get; } = new((state, inspection) => inspection with { Photos = PhotosOf(state) });

    private static List<Photo> PhotosOf(State state)
    {
        var marks = state.Of<EntryBody.PhotoMarked>().Where(line => line.Stands).ToLookup(line => ((EntryBody.PhotoMarked)line.Body).Photo);
        return state.Each<EntryBody.PhotoTaken, Photo>((line, body) => new Photo
        {
            Id = line.Name,
            Body = body,
            At = line.At,
            Placed = state.Slots.Slot(new SlotKey("photo.placed", line.Name, ""), placed => (EntryBody.PhotoPlaced)placed),
            Marks = [.. marks[line.Name].Select(mark => new PhotoMark(mark.Name, (EntryBody.PhotoMarked)mark.Body))],
        });
    }
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

    /// <summary>What is drawn on it.</summary>
    public IReadOnlyList<PhotoMark> Marks { get; init; } = [];

    /// <summary>What it is used as, see <see cref="PhotoUse"/>: as placed, else as taken; none when that is still to be said.</summary>
    public string? Use => Placed?.Value is not { } placed ? Body.Use : IsOldNameplate(placed) ? PhotoUse.Nameplate : placed.Use;

    /// <summary>What to look at, in the inspector's words.</summary>
    public string? Caption => Placed?.Value is { } placed && !IsOldNameplate(placed) ? placed.Caption : null;

    /// <summary>When, as its device believed.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The evidence it belongs to: as placed, else as taken.</summary>
    public EntryName? For => Placed?.Value.For ?? Body.For;

    /// <summary>Where: as placed, else as taken.</summary>
    public EntryName? Place => Placed?.Value.Place ?? Body.Place;

    /// <summary>Of what: as placed, else as taken.</summary>
    public EntryName? Component => Placed?.Value.Component ?? Body.Component;

    /// <summary>In earlier journals a nameplate was a photograph of where we are with this caption.</summary>
    private static bool IsOldNameplate(EntryBody.PhotoPlaced placed) => placed is { Use: PhotoUse.Context, Caption: "Nameplate" };
}

/// <summary>A mark on a photograph.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Body">What it says.</param>
public sealed record PhotoMark(EntryName Id, EntryBody.PhotoMarked Body);
