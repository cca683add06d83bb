namespace Purlin.Hearing.Talk;

/// <summary>One word as it was meant, after what dictation misheard was put right.</summary>
/// <param name="Text">Small letters, no punctuation, no apostrophe.</param>
/// <param name="First">Index of the first spoken word it stands for.</param>
/// <param name="End">Index of the word after the last.</param>
/// <param name="Pause">Whether something ended before it.</param>
internal readonly record struct MendedWord(string Text, int First, int End, bool Pause);
