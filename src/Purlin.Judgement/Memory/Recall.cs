namespace Purlin.Judgement.Memory;

/// <summary>
/// Remembers what was worked out together with what was asked of the evidence on the way (incremental computation). A result holds until something that it asked for
/// has changed; who asks for a remembered result asks for all that it rests on. So one new entry costs only what rests on it, and no rule
/// has to know on what it rests.
/// </summary>
internal sealed class Recall
{
    // Far more than a full inspection needs; beyond it everything is worked out anew, so that nothing grows for ever.
    private const int Most = 60_000;

    private readonly Dictionary<(string Part, string Id), Remembered> results = [];
    private readonly Dictionary<Topic, List<Remembered>> readers = [];
    private Remembered? asking;

    /// <summary>Says that the result being worked out rests on this (records a dependency).</summary>
    public void Ask(Topic topic)
    {
        if (asking is null || !asking.Asked.Add(topic)) return;
        if (!readers.TryGetValue(topic, out var all)) readers[topic] = all = [];
        all.Add(asking);
    }

    /// <summary>Everything that rests on this is to be worked out anew.</summary>
    public void Changed(Topic topic)
    {
        if (!readers.Remove(topic, out var all)) return;
        foreach (var result in all)
        {
            result.Holds = false;
            result.Asked.Remove(topic);
        }
    }

    /// <summary>The remembered result, worked out when there is none that holds (memoize).</summary>
    /// <param name="part">What kind of result.</param>
    /// <param name="id">Which one of it.</param>
    /// <param name="given">What it is made from besides the evidence: an object, or an array of them; another object is another result.</param>
    /// <param name="work">Works it out, whole: nothing of it may ask later.</param>
    public T Once<T>(string part, string id, object? given, Func<T> work)
        where T : class
    {
        var found = results.TryGetValue((part, id), out var known);
        if (!found || !known!.Holds || !Same(known.Given, given))
        {
            if (results.Count > Most) Forget();
            var result = known ?? new Remembered();
            if (!found) results[(part, id)] = result;
            var outer = asking;
            asking = result;
            // Set first, so that a change found while it is worked out is not overlooked.
            (result.Holds, result.Given, result.Value) = (true, given, null);
            try
            {
                result.Value = work();
            }
            catch
            {
                result.Holds = false;
                throw;
            }
            finally
            {
                asking = outer;
            }
            known = result;
        }
        if (asking is not null)
            foreach (var topic in known!.Asked) Ask(topic);
        return (T)known!.Value!;
    }

    private static bool Same(object? known, object? given)
    {
        if (known is not object[] some || given is not object[] others) return ReferenceEquals(known, given);
        if (some.Length != others.Length) return false;
        for (var at = 0; at < some.Length; at++)
            if (!ReferenceEquals(some[at], others[at])) return false;
        return true;
    }

    /// <summary>Forgets everything.</summary>
    public void Forget()
    {
        results.Clear();
        readers.Clear();
    }

    private sealed class Remembered
    {
        public bool Holds { get; set; }

        public object? Given { get; set; }

        public object? Value { get; set; }

        public HashSet<Topic> Asked { get; } = [];
    }
}
