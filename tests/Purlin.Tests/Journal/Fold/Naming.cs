using System.Collections;
using Purlin.Journal;

namespace Purlin.Tests.Journal.Fold;

/// <summary>The names in a body, found by looking at its members: the check's own way, apart from the fold's list of them.</summary>
internal static class Naming
{
    public static IReadOnlySet<EntryName> In(EntryBody body)
    {
        HashSet<EntryName> names = [];
        foreach (var property in body.GetType().GetProperties())
        {
            var value = property.GetValue(body);
            if (value is EntryName name) names.Add(name);
            if (value is not (string or EntryName) and IEnumerable items) names.UnionWith(items.OfType<EntryName>());
            if (value is IEnumerable<ReadFrom> sources) names.UnionWith(sources.Select(source => source.Entry));
        }

        if (body is EntryBody.ProposalMade made) names.UnionWith(In(made.Offered().OrThrow()));

        return names;
    }
}
