using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Purlin.Tests.House;

/// <summary>
/// Rules ask the evidence index, which notes what each result rests on. Who takes the inspection itself asks past it, and what they work out
/// must be worked out anew each time.
/// </summary>
public sealed class EvidenceRules
{
    private static readonly string[] Allowed =
    [
        "src/Purlin.Judgement/Judging.cs",
        "src/Purlin.Judgement/JudgingMemory.cs",
        "src/Purlin.Judgement/JudgementJson.cs",
        "src/Purlin.Judgement/Obstacles.cs",
        "src/Purlin.Judgement/Evidence/Difference.cs",
        "src/Purlin.Judgement/Evidence/EvidenceIndex.cs",
        "src/Purlin.Judgement/Findings/NoteSpeaking.cs",
        "src/Purlin.Judgement/Findings/Observing.cs",
        "src/Purlin.Judgement/Findings/Overruled.cs",
        "src/Purlin.Judgement/Findings/PhotoSpeaking.cs",
        "src/Purlin.Judgement/Looking/LookGround.cs",
        "src/Purlin.Judgement/Looking/LookOrder.cs",
        "src/Purlin.Judgement/Understanding/References.cs",
        "src/Purlin.Judgement/Understanding/Renaming.cs",
    ];

    [Fact]
    public void Only_these_take_an_inspection_past_the_evidence_index()
    {
        var takers = Repository.Sources("src/Purlin.Judgement")
            .Where(source => source.Tree.DescendantNodes().OfType<ParameterSyntax>().Any(parameter => parameter.Type?.ToString() is "Inspection" or "Inspection?"))
            .Select(source => source.File);
        Assert.Equal(Allowed.Order(StringComparer.Ordinal), takers.Order(StringComparer.Ordinal));
    }
}
