namespace Purlin.Hearing.Listening;

/// <summary>One word as dictation wrote it.</summary>
/// <param name="Text">The word, with what punctuation it came with.</param>
/// <param name="From">When it begins, in seconds from the start; none where no time is known.</param>
/// <param name="To">When it ends, in seconds.</param>
/// <param name="Pause">Whether something ended before it: a pause, a full stop, an empty line.</param>
public readonly record struct SpokenWord(string Text, double? From = null, double? To = null, bool Pause = false);
