namespace Purlin.Hearing.Matters;

/// <summary>
/// One thing that was said, as a number of the vocabulary, with its sign: "no rust" is rust with a minus, and so is "handrail missing"
/// a handrail.
/// </summary>
/// <param name="Concept">Number in the vocabulary.</param>
/// <param name="Start">First piece it took.</param>
/// <param name="End">The piece after the last.</param>
/// <param name="Sign">1, or -1 where it is denied.</param>
/// <param name="Share">How much it counts: several concepts out of one word count less each.</param>
internal readonly record struct Sense(int Concept, int Start, int End, int Sign, double Share);
