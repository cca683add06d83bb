using Purlin.Book.Naming;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Judgement.Understanding;

/// <summary>Says of what was not understood what is the matter with it.</summary>
internal sealed class Telling(Tongue words)
{
    /// <summary>A name that is not of the book, or was taken for one of it; none where it is plain.</summary>
    /// <param name="entry">Where it was written.</param>
    /// <param name="member">What of the entry it is.</param>
    /// <param name="what">What kind of name it is, in words.</param>
    /// <param name="given">What was written.</param>
    /// <param name="meant">What it means.</param>
    /// <param name="bars">Whether evidence is lost where it means nothing.</param>
    public LookAgain? Name(EntryName entry, string member, string what, string given, Meant meant, bool bars) => meant.Found switch
    {
        Found.Slip => new LookAgain
        {
            Entry = entry,
            Member = member,
            Given = given,
            Taken = meant.Name,
            Nearest = meant.Nearest,
            Words = words.Say("again.taken", ("what", what), ("given", given), ("taken", meant.Name)),
        },
        Found.Unknown => new LookAgain
        {
            Entry = entry,
            Member = member,
            Given = given,
            Nearest = meant.Nearest,
            Bars = bars,
            Words = Unknown(what, given, meant),
        },
        _ => null,
    };

    private string Unknown(string what, string given, Meant meant)
    {
        var said = words.Say("again.unknown", ("what", what), ("given", given));
        if (meant.Allowed.Count == 0) return Nearest(said, meant.Nearest);
        return $"{said} {words.Say("again.allowed", ("names", SaidValue.Of(meant.Allowed)))}";
    }

    /// <summary>Something that cannot be used as it stands.</summary>
    public static LookAgain Odd(EntryName entry, string member, string given, string said, bool bars) => new()
    {
        Entry = entry,
        Member = member,
        Given = given,
        Words = said,
        Bars = bars
    };

    /// <summary>A sentence of the book's language.</summary>
    public string Say(string key, params ReadOnlySpan<Filled> with) => words.Say(key, with);

    /// <summary>What a line says that the program read otherwise, or not at all.</summary>
    public LookAgain Misread(MisreadEntry misread)
    {
        var (member, given, taken, nearest) = misread.What;
        var key = member == "type" ? "again.type" : taken is not null ? "again.member.taken" : "again.member";
        return new LookAgain
        {
            Entry = misread.Entry,
            Member = member,
            Given = given,
            Taken = taken,
            Nearest = nearest,
            Words = Nearest(words.Say(key, ("type", misread.Type), ("member", member), ("given", given), ("taken", taken
                ?? "")), taken is null ? nearest : []),
        };
    }

    private string Nearest(string said, IReadOnlyList<string> nearest) => nearest.Count == 0
        ? said : $"{said} {words.Say("again.nearest", ("names", SaidValue.Of(nearest)))}";
}
