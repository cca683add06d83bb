using Purlin.Journal;

namespace Purlin.Book.Naming;

/// <summary>Holds every synonym to a name that the book has, and to one meaning.</summary>
internal static class SynonymCheck
{
    /// <summary>Tells what is wrong with the synonyms of a draft.</summary>
    public static void Check(BookDraft draft)
    {
        HashSet<string> components =
        [
            .. draft.Conditions.Values.Select(line => line.Rule.Component), .. draft.Sheets.Keys, .. draft.Core.Values.SelectMany(line =>
                line.Rule.Components),
            .. draft.Feeds.Values.SelectMany(line => line.Rule.Components), .. draft.Usual.Values.SelectMany(line =>
                line.Rule.Things).Select(thing => thing.Component),
        ];
        HashSet<string> facts = [.. draft.Sheets.Values.SelectMany(line => line.Rule.Facts).Select(fact =>
            fact.Fact), .. draft.FactRules.Values.Select(line => line.Rule.Fact)];
        Dictionary<(Named, string, string, string), string> met = [];
        foreach (var (line, path) in draft.Synonyms)
        {
            var where = $"{path}: {line.Of.Word()} {line.Means}".TrimEnd();
            IReadOnlyCollection<string>? known = line.Of switch
            {
                Named.Place => PlaceKind.All,
                Named.Component => components,
                Named.Reading => draft.ReadingKinds.Keys,
                Named.Condition => draft.Conditions.Keys,
                Named.Fact => facts,
                _ => null,
            };
            if (known is not null && !known.Contains(line.Means)) draft.Refuse(where, line.Means, Nearest.InWords(line.Means, known,
                line.Of.Word()));
            if ((line.Of == Named.Value) != (line.Fact.Length > 0)) draft.Refuse(where, line.Fact, line.Of == Named.Value
                ? "fact" : "none");
            foreach (var kind in line.Components) BookCheck.OneOf(where, kind, [.. components, "house"], draft.Refuse);
            foreach (var said in line.Said)
                foreach (var kind in line.Components.DefaultIfEmpty(""))
                    if (!met.TryAdd((line.Of, line.Fact, kind, NameList.Fold(said)), line.Means) && met[(line.Of, line.Fact, kind,
                        NameList.Fold(said))] != line.Means)
                        draft.Refuse(where, said, $"{line.Means}, {met[(line.Of, line.Fact, kind, NameList.Fold(said))]}: one");
        }
    }
}
