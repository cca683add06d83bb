using Purlin.Journal;

namespace Purlin.Tests;

/// <summary>What is said, in the words of the standard language: tests that read sentences read them here.</summary>
internal static class InWords
{
    internal static Tongue Tongue { get; } = Tongue.BuiltIn(Tongue.Standard);

    internal static string Of(Said said) => Tongue.Say(said);
}
