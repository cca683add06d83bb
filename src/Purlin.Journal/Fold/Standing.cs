namespace Purlin.Journal.Fold;

/// <summary>
/// Which lines stand. A withdrawal takes effect unless something that stands builds on its target, or restores it, which the withdrawer had
/// not in hand: keep wins. Whatever acts on a line comes after it in causal order, so one pass from the end settles undo of undo to any depth.
/// </summary>
internal static class Standing
{
    public static List<Unsettled> Settle(List<Line> order, IReadOnlyDictionary<EntryName, Line> byName)
    {
        var acts = ActsByTarget(order, byName);
        List<Unsettled> kept = [];
        for (var at = order.Count - 1; at >= 0; at--)
        {
            var line = order[at];
            // What was issued stays issued: no withdrawal reaches an edition.
            if (line.Body is EntryBody.EditionSealed || !acts.TryGetValue(line.Name, out var on)) continue;
            var standing = on.Where(act => act.Stands).ToList();
            var withdrawals = standing.Where(act => act.Body is EntryBody.EntryWithdrawn).ToList();
            if (withdrawals.Count == 0) continue;
            var restores = standing.Where(act => act.Body is EntryBody.EntryRestored).ToList();
            var tips = Tips(standing.Where(act => act.Body is not EntryBody.EntryWithdrawn));
            line.Stands = !withdrawals.Exists(withdrawal => tips.TrueForAll(tip => withdrawal.Saw(tip.Name)));
            if (line.Stands && Dispute(line, withdrawals, restores, tips) is { } dispute) kept.Add(dispute);
        }

        kept.Reverse();
        return kept;
    }

    private static Dictionary<EntryName, List<Line>> ActsByTarget(List<Line> order, IReadOnlyDictionary<EntryName, Line> byName)
    {
        Dictionary<EntryName, List<Line>> acts = [];
        foreach (var line in order)
        {
            foreach (var name in line.References)
            {
                if (!byName.TryGetValue(name, out var target) || target.Position >= line.Position) continue;
                if (!acts.TryGetValue(name, out var on)) acts[name] = on = [];
                if (on is not [.., var last] || last != line) on.Add(line);
            }
        }

        return acts;
    }

    /// <summary>The last of each strand: who had that in hand had the earlier ones too.</summary>
    private static List<Line> Tips(IEnumerable<Line> lines)
    {
        Dictionary<string, Line> tips = new(StringComparer.Ordinal);
        foreach (var line in lines)
        {
            if (!tips.TryGetValue(line.Name.Device, out var tip) || line.Name.Seq > tip.Name.Seq) tips[line.Name.Device] = line;
        }

        return [.. tips.Values];
    }

    private static Unsettled? Dispute(Line target, List<Line> withdrawals, List<Line> restores, List<Line> tips)
    {
        foreach (var withdrawal in withdrawals)
        {
            if (restores.Exists(restore => restore.Saw(withdrawal.Name))) continue;
            Line[] unseen = [.. tips.Where(tip => !withdrawal.Saw(tip.Name)).OrderBy(tip => tip.Position)];
            return new Unsettled(
                UnsettledKind.KeepWins,
                [target.Name, withdrawal.Name, .. unseen.Select(tip => tip.Name)],
                $"{Words.Of(target.Body)} was taken back by {withdrawal.Name.Device} while {unseen[0].Name.Device} went on with it, so it is kept. Take it back again or restore it.");
        }

        return null;
    }
}
