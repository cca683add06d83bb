namespace Purlin.Journal.Fold;

/// <summary>
/// Which lines stand. A withdrawal takes effect unless something that stands builds on its target, or restores it, which the withdrawer had
/// not in hand: keep wins. Whatever acts on a line comes after it in causal order, so one pass from the end settles undo of undo to any
/// depth.
/// </summary>
internal sealed class Standing
{
    private readonly List<Line> order;
    private readonly IReadOnlyDictionary<EntryName, Line> byName;
    private readonly Dictionary<EntryName, List<Line>> acts = [];
    private readonly Dictionary<EntryName, Unsettled> disputes = [];

    private Standing(List<Line> order, IReadOnlyDictionary<EntryName, Line> byName) => (this.order, this.byName) = (order, byName);

    /// <summary>Withdrawals without effect, in causal order.</summary>
    public IEnumerable<Unsettled> Disputes => disputes.OrderBy(dispute => byName[dispute.Key].Position).Select(dispute => dispute.Value);

    public static Standing Of(List<Line> order, IReadOnlyDictionary<EntryName, Line> byName)
    {
        var standing = new Standing(order, byName);
        foreach (var line in order) standing.Act(line);
        for (var at = order.Count - 1; at >= 0; at--) standing.Settle(order[at]);
        return standing;
    }

    /// <summary>Takes in a line that comes after all others, and gives the lines that stand otherwise now.</summary>
    public IReadOnlyList<Line> Add(Line line)
    {
        Act(line);
        List<Line> turned = [];
        SortedSet<int> left = [.. Targets(line)];
        while (left.Count > 0)
        {
            var at = left.Max;
            left.Remove(at);
            var target = order[at];
            var stood = target.Stands;
            Settle(target);
            if (target.Stands == stood) continue;
            turned.Add(target);
            left.UnionWith(Targets(target));
        }

        return turned;
    }

    private IEnumerable<int> Targets(Line line)
    {
        foreach (var name in line.References)
            if (byName.TryGetValue(name, out var target) && target.Position < line.Position) yield return target.Position;
    }

    private void Settle(Line line)
    {
        disputes.Remove(line.Name);
        // What was issued stays issued: no withdrawal reaches an edition.
        if (line.Body is EntryBody.EditionSealed || !acts.TryGetValue(line.Name, out var on)) return;
        var withdrawals = on.FindAll(act => act.Stands && act.Body is EntryBody.EntryWithdrawn);
        line.Stands = true;
        if (withdrawals.Count == 0) return;
        var restores = on.FindAll(act => act.Stands && act.Body is EntryBody.EntryRestored);
        var tips = Tips(on.Where(act => act.Stands && act.Body is not EntryBody.EntryWithdrawn));
        line.Stands = !withdrawals.Exists(withdrawal => tips.TrueForAll(tip => withdrawal.Saw(tip.Name)));
        if (line.Stands && Dispute(line, withdrawals, restores, tips) is { } dispute) disputes[line.Name] = dispute;
    }

    private void Act(Line line)
    {
        foreach (var name in line.References)
        {
            if (!byName.TryGetValue(name, out var target) || target.Position >= line.Position) continue;
            if (!acts.TryGetValue(name, out var on)) acts[name] = on = [];
            if (on is not [.., var last] || last != line) on.Add(line);
        }
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
                $"{target.Body.Said} was taken back by {withdrawal.Name.Device} while {unseen[0].Name.Device} went on with it, so it is kept. Take it back again or restore it.");
        }

        return null;
    }
}
