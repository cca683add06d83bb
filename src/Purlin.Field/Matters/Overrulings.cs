using Purlin.Book;
using Purlin.Journal;
using Purlin.Journal.Fold;
using Purlin.Judgement;

namespace Purlin.Field.Matters;

/// <summary>One thing the inspector put otherwise.</summary>
/// <param name="Body">What was put, with the reason.</param>
/// <param name="By">The entry.</param>
/// <param name="From">What stood there before; empty when that is not known.</param>
/// <param name="IsUsed">Whether the judgement goes by it.</param>
/// <param name="Beside">Every value that stands in the same slot, this one included.</param>
public sealed record Put(EntryBody.JudgementOverruled Body, EntryName By, string From, bool IsUsed, IReadOnlyList<EntryName> Beside)
{
    /// <summary>Two devices wrote apart: a person says which.</summary>
    public bool Diverges => Beside.Count > 1;
}

/// <summary>What the inspector put otherwise in a matter: also what stands beside it, and what does not count.</summary>
public static class Overrulings
{
    public static IReadOnlyList<Put> Of(Inspection inspection, Finding finding)
    {
        List<Put> puts = [];
        foreach (var part in MatterParts.All)
        {
            if (!inspection.Overrulings.TryGetValue((finding.Id.ToString(), part.Word()), out var slot)) continue;
            IReadOnlyList<EntryName> beside = [.. slot.Standing.Select(stated => stated.By)];
            puts.AddRange(slot.Standing.Select(stated => Read(finding, stated, beside)));
        }
        return [.. puts, .. OfMembers(inspection, finding, puts)];
    }

    private static Put Read(Finding finding, Stated<EntryBody.JudgementOverruled> stated, IReadOnlyList<EntryName> beside)
    {
        var used = finding.Overruled.FirstOrDefault(change => change.By == stated.By);
        return new Put(stated.Value, stated.By, used?.From ?? "", used is not null, beside);
    }

    // A matter that explains others carries what was put for them too.
    private static IEnumerable<Put> OfMembers(Inspection inspection, Finding finding, List<Put> own) =>
        from change in finding.Overruled
        where own.TrueForAll(put => put.By != change.By)
        from slot in inspection.Overrulings.Values
        from stated in slot.Standing
        where stated.By == change.By
        select new Put(stated.Value, stated.By, change.From, true, [stated.By]);
}
