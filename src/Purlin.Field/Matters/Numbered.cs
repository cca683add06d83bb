using Purlin.Judgement;

namespace Purlin.Field.Matters;

/// <summary>A matter with its number on the section drawing; none when it is left out.</summary>
public sealed record Numbered(Finding Finding, int? Number)
{
    /// <summary>Every matter in the order of judgement; those left out have no number, as on the drawing.</summary>
    public static IReadOnlyList<Numbered> All(JudgedInspection judged)
    {
        var next = 0;
        return [.. judged.Findings.Select(finding => new Numbered(finding, finding.LeftOut ? null : ++next))];
    }
}
