using System.Collections.Concurrent;
using System.Text.Json;

namespace Purlin.Journal.Tongues;

/// <summary>
/// The sentences that travel inside the program: <c>rulebook/words/LANGUAGE/**/*.json</c>, each file one object of keys and sentences.
/// </summary>
internal static class BuiltInWords
{
    private const string Root = "words/";

    private static readonly ConcurrentDictionary<string, Tongue> Read = new(StringComparer.Ordinal);

    internal static IReadOnlyList<string> Languages { get; } =
        [.. Names().Select(name => name[Root.Length..name.IndexOf('/', Root.Length)]).Distinct(StringComparer.Ordinal)
        .Order(StringComparer.Ordinal)];

    internal static Tongue Of(string language) => Read.GetOrAdd(language, static one =>
    {
        if (!Languages.Contains(one))
            throw new ArgumentException($"no language {one}; there are {string.Join(", ", Languages)}", nameof(language));
        Dictionary<string, string> sentences = new(StringComparer.Ordinal);
        foreach (var name in Names().Where(name => name.StartsWith($"{Root}{one}/", StringComparison.Ordinal))) Fill(sentences, name);
        return one == Tongue.Standard ? Tongue.Of(one, sentences) : Of(Tongue.Standard).Under(sentences, one);
    });

    private static IEnumerable<string> Names() =>
        typeof(BuiltInWords).Assembly.GetManifestResourceNames().Select(name => name.Replace('\\', '/'))
        .Where(name => name.StartsWith(Root, StringComparison.Ordinal));

    private static void Fill(Dictionary<string, string> sentences, string name)
    {
        using var stream = typeof(BuiltInWords).Assembly.GetManifestResourceStream(name)
            ?? typeof(BuiltInWords).Assembly.GetManifestResourceStream(name.Replace('/', '\\'))!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        foreach (var (key, sentence) in WordsFile.Read(bytes)) sentences[key] = sentence;
    }
}
