using Purlin.Judgement;
using Purlin.Office.Storage;

namespace Purlin.Office.Issue;

/// <summary>What stands in the way of issue; with a sentence when somebody tried to seal.</summary>
internal sealed record ObstaclesAnswer(IReadOnlyList<ObstacleAnswer> Obstacles, IReadOnlyList<string> MissingPhotos, string? Words = null)
{
    public static ObstaclesAnswer Of(IReadOnlyList<Obstacle> obstacles, IReadOnlyList<string> missing) =>
        new([.. obstacles.Select(obstacle => new ObstacleAnswer(obstacle.Kind, obstacle.Words, obstacle.Place?.ToString()))], missing);
}

/// <summary>One of them.</summary>
internal sealed record ObstacleAnswer(string Kind, string Words, string? Place);

/// <summary>A sealed edition.</summary>
internal sealed record EditionAnswer(int Number, string Seal, string Root, string Page, string Pdf, string At)
{
    public static EditionAnswer Of(IssuedEdition edition) => new(edition.Number, edition.Seal, edition.Root, edition.Page, edition.Pdf, Instant.Seconds(edition.At));
}
