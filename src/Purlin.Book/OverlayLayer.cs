using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Purlin.Book;

/// <summary>A book while own sentences are laid over it. Only what is touched is copied: most of a book is never said otherwise.</summary>
internal sealed class OverlayLayer(RuleBook book)
{
    private Dictionary<string, Condition>? conditions;
    private Dictionary<string, LimitationRule>? limitations;
    private Dictionary<string, string>? words;
    private Dictionary<string, string>? cautions;
    private Dictionary<string, string>? heard;
    private Dictionary<string, CoreDuty>? core;
    private Dictionary<string, Standard>? standards;
    private Dictionary<string, ReadingKind>? readings;
    private ImmutableArray<CauseRule> causes = book.Causes;
    private ImmutableArray<Escalation> escalations = book.Escalations;
    private ImmutableArray<Profile> profiles = book.Profiles;
    private ImmutableArray<Feed> feeds = book.Feeds;
    private ImmutableArray<FactRule> facts = book.FactRules;
    private ImmutableArray<VisitRule> visit = book.Visit;
    private Dictionary<string, SettingRule>? settings;

    public void Add(Condition own) =>
        (conditions ??= new Dictionary<string, Condition>(book.Conditions, StringComparer.Ordinal))[own.Id] = own;

    /// <summary>Says a sentence otherwise that the book has.</summary>
    public void Say(string key, string now)
    {
        if (!SentenceKey.TryParse(key, out var parts)) return;
        var (head, rest) = parts;
        if (book.Conditions.ContainsKey(head)) Put(ref conditions, book.Conditions, head, condition => Put(condition, rest, now));
        else if (book.Limitations.ContainsKey(head)) Put(ref limitations, book.Limitations, head, rule => Put(rule, rest, now));
        else if (head == Sentences.Heard) (heard ??= new Dictionary<string, string>(book.SameWords, StringComparer.Ordinal))[rest] = now;
        else if (head == "words" && book.Words.Find(rest) is not null)
            (words ??= new Dictionary<string, string>(StringComparer.Ordinal))[rest] = now;
        else if (head == "cautions") Put(ref cautions, book.Cautions, rest, _ => now);
        else Say(parts, now);
    }

    public RuleBook Book() => book with
    {
        Conditions = Frozen(conditions, book.Conditions),
        Limitations = Frozen(limitations, book.Limitations),
        Words = words is null ? book.Words : book.Words.Under(words),
        Cautions = Frozen(cautions, book.Cautions),
        SameWords = heard?.ToFrozenDictionary(StringComparer.Ordinal) ?? book.SameWords,
        Core = Frozen(core, book.Core),
        Standards = Frozen(standards, book.Standards),
        ReadingKinds = Frozen(readings, book.ReadingKinds),
        Causes = causes,
        Escalations = escalations,
        Profiles = profiles,
        Feeds = feeds,
        FactRules = facts,
        Visit = visit,
        Settings = Frozen(settings, book.Settings),
    };

    private void Say(SentenceKey key, string now)
    {
        var (id, part) = key.LongId;
        switch (key.Owner)
        {
            case "core":
                Put(ref core, book.Core, id, duty => part == "name" ? duty with { Name = now } : duty with { Text = now });
                break;
            case "duties":
                var (standard, section) = key.LongPart;
                Put(ref standards, book.Standards, standard,
                    one => one with { Duties = [.. one.Duties.Select(duty => duty.Id == section ? duty with { Text = now } : duty)] });
                break;
            case "readings":
                Put(ref readings, book.ReadingKinds, id, kind => kind with { Raises = Put(kind.Raises, part, now) });
                break;
            case "visit":
                var (rule, asked) = key.LongPart;
                visit = Each(visit, one => one.Id == rule, one => Put(one, asked, now));
                break;
            case "settings":
                Put(ref settings, book.Settings, id, setting => setting with { Name = now });
                break;
            case "causes":
                causes = Each(causes, cause => cause.Id == id, cause => Put(cause, part, now));
                break;
            case "escalations":
                escalations = Each(escalations, rule => rule.Id == id, rule => rule with { Because = now });
                break;
            case "profiles":
                profiles = Each(profiles, profile => profile.Id == id, profile => Put(profile, part, now));
                break;
            case "feeds":
                feeds = Each(feeds, feed => feed.Id == id, feed => feed with { Raises = Put(feed.Raises, part, now) });
                break;
            case "facts":
                facts = Each(facts, rule => $"{rule.Component}/{rule.Fact}" == id
                    && rule.Raise.Condition == part, rule => rule with { Raise = rule.Raise with { Because = now } });
                break;
        }
    }

    private static Condition Put(Condition condition, string part, string now) => part switch
    {
        "name" => condition with { Name = now },
        "signs" => condition with { Signs = now.Split(Sentence.Between) },
        "means" => condition with { Means = now },
        "leads" => condition with { Leads = now },
        "clears" => condition with { Clears = now },
        "do" => condition with { Do = now },
        "trade" => condition with { Trade = now },
        _ => condition with { Look = [.. condition.Look.Select(follow => Put(follow, part, now))] },
    };

    private static Follow Put(Follow follow, string part, string now) =>
        part == $"look/{follow.Id}/ask" ? follow with { Ask = now }
        : part == $"look/{follow.Id}/refer" ? follow with { Refer = now }
        : part == $"look/{follow.Id}/trade" ? follow with { Trade = now }
        : follow;

    private static LimitationRule Put(LimitationRule rule, string part, string now) => part switch
    {
        "next" => rule with { Next = now },
        "reasons" => rule with { Reasons = now.Split(Sentence.Between) },
        _ => rule with { What = now },
    };

    private static CauseRule Put(CauseRule cause, string part, string now) => part switch
    {
        "title" => cause with { Title = now },
        "means" => cause with { Means = now },
        "do" => cause with { Do = now },
        _ => cause with { Trade = now },
    };

    private static VisitRule Put(VisitRule rule, string part, string now) => part switch
    {
        "name" => rule with { Name = now },
        "text" => rule with { Text = now },
        "open" => rule with { Open = now },
        "where" => rule with { Where = now },
        "day" => rule with { Date = rule.Date! with { Words = now } },
        _ => rule with { Facts = [.. rule.Facts.Select(fact => part == $"ask/{fact.Name}" ? fact with { Ask = now } : fact)] },
    };

    private static Profile Put(Profile profile, string part, string now) => part switch
    {
        "title" => profile with { Title = now },
        "reason" => profile with { Reason = now },
        _ => profile with { Look = now },
    };

    private static IReadOnlyList<Raise> Put(IReadOnlyList<Raise> raises, string part, string now) =>
        [.. raises.Select((raise, index) => Sentences.PartOf(raises, index) == part ? raise with { Because = now } : raise)];

    private static void Put<T>(ref Dictionary<string, T>? changed, FrozenDictionary<string, T> from, string id, Func<T, T> change)
    {
        changed ??= new Dictionary<string, T>(from, StringComparer.Ordinal);
        if (changed.TryGetValue(id, out var one)) changed[id] = change(one);
    }

    private static ImmutableArray<T> Each<T>(ImmutableArray<T> all, Func<T, bool> which, Func<T, T> change) =>
        [.. all.Select(one => which(one) ? change(one) : one)];

    private static FrozenDictionary<string, T> Frozen<T>(Dictionary<string, T>? changed, FrozenDictionary<string, T> from) =>
        changed?.ToFrozenDictionary(StringComparer.Ordinal) ?? from;
}
