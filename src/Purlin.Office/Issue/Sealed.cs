using Purlin.Judgement;
using Purlin.Office.Storage;

namespace Purlin.Office.Issue;

/// <summary>What came of a wish to seal an edition.</summary>
public abstract record Sealed
{
    private Sealed() { }

    /// <summary>It was sealed.</summary>
    public sealed record Done(IssuedEdition Edition) : Sealed;

    /// <summary>Something stands in the way.</summary>
    public sealed record Refused(IReadOnlyList<Obstacle> Obstacles, IReadOnlyList<string> MissingPhotos) : Sealed;

    /// <summary>Nothing changed since the last edition.</summary>
    public sealed record Unchanged(IssuedEdition Last) : Sealed;

    /// <summary>The office holds nothing of this inspection.</summary>
    public sealed record Unknown : Sealed;
}
