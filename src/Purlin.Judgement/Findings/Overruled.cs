using Purlin.Book;
using Purlin.Journal.Fold;
using Purlin.Journal;
using Purlin.Judgement.Evidence;

namespace Purlin.Judgement.Findings;

/// <summary>The inspector decides: puts their weight, sentence, recommendation or trade in place of the program's, and keeps both with the reason.</summary>
internal static class Overruled
{
    /// <summary>The parts that can be overruled, in the order in which they are applied.</summary>
    private static readonly FindingPart[] Parts = Enum.GetValues<FindingPart>();

    public static Finding Apply(Inspection inspection, Tongue words, Finding finding)
    {
        if (inspection.Overrulings.Count == 0) return finding;
        foreach (var part in Parts)
            if (inspection.Overrulings.TryGetValue((finding.Id.ToString(), part.Word()), out var slot)) finding = Apply(finding, part, slot.Standing[0], words);
        return finding;
    }

    /// <summary>
    /// A group answers to what was said of its leading finding. A lighter weight counts only for the evidence that the one
    /// who gave it had in hand: what came to them later, from this phone or another, is not hidden by it, whatever any clock says.
    /// </summary>
    public static Finding ApplyToGroup(Inspection inspection, EvidenceIndex evidence, Finding group)
    {
        foreach (var part in Parts)
        {
            if (!inspection.Overrulings.TryGetValue((group.Id.ToString(), part.Word()), out var slot)) continue;
            var stated = slot.Standing[0];
            var lighter = part == FindingPart.Weight && WordTable.Read<Weight>(stated.Value.Value) < group.Weight;
            if (!lighter || group.Evidence.All(stated.Saw)) group = Apply(group, part, stated, evidence.Book.Words);
        }
        return group;
    }

    private static Finding Apply(Finding finding, FindingPart part, Stated<EntryBody.JudgementOverruled> stated, Tongue words)
    {
        var (value, reason) = (stated.Value.Value, stated.Value.Reason);
        var (from, changed) = part switch
        {
            FindingPart.Weight when WordTable.Read<Weight>(value) is { } weight =>
                (finding.Weight.Word(), finding with { Weight = weight, Why = [.. finding.Why, new Contribution(Speaks.Overruled, reason, weight)] }),
            FindingPart.ByWhen when WordTable.Read<ByWhen>(value) is { } by => (finding.Due?.By.Word() ?? "", finding with { Due = new Due(by, words.Say("by-when.overruled", ("reason", reason))) }),
            FindingPart.Title when value.Length > 0 => (finding.Title, finding with { Title = value }),
            FindingPart.Text when value.Length > 0 => (finding.Matters, finding with { Matters = value }),
            FindingPart.Recommendation when value.Length > 0 => (finding.Do, finding with { Do = value }),
            FindingPart.Trade when value.Length > 0 => (finding.Trade, finding with { Trade = value }),
            FindingPart.LeftOut => ("", finding with { LeftOut = true }),
            _ => ("", finding),
        };
        return ReferenceEquals(changed, finding) ? finding : changed with { Overruled = [.. finding.Overruled, new Overruling(part, from, value, reason, stated.By)] };
    }
}
