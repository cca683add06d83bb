namespace Purlin.Field.Visits;

/// <summary>The standards of practice the rule book holds.</summary>
public static class StandardsKnown
{
    public static IReadOnlyList<(string Id, string Title)> All { get; } = [];
}
