namespace Purlin.Hearing.Matters;

/// <summary>
/// The figures by which talk is weighed; found by trying them on the narrations of tests/Purlin.Tests/Fixtures/narrations that are not
/// held out.
/// </summary>
internal sealed record HearingScale
{
    public static HearingScale Usual { get; } = new();

    /// <summary>What a stretch must fit above to say anything at all.</summary>
    public double Cost { get; init; } = 6.5;

    /// <summary>How much it tells against a phrase that only part of it was said.</summary>
    public double Wholeness { get; init; } = 2.05;

    /// <summary>What a phrase gains that was said whole of a thing that is named.</summary>
    public double Whole { get; init; } = 1.2;

    /// <summary>How much more much tells than little.</summary>
    public double Bulk { get; init; } = 0.75;

    /// <summary>Brings what fits to the measure of the cost.</summary>
    public double Scale { get; init; } = 1.75;

    /// <summary>How far the thing that was named before stands for its name.</summary>
    public double Carried { get; init; } = 0.45;

    /// <summary>Factor where the thing itself is named.</summary>
    public double Named { get; init; } = 0.93;

    /// <summary>Factor where it was named before.</summary>
    public double InHand { get; init; } = 1.02;

    /// <summary>Factor where it is named as a spot only.</summary>
    public double NamedAsSpot { get; init; } = 0.85;

    /// <summary>Factor where another thing is named.</summary>
    public double OtherNamed { get; init; } = 0.86;

    /// <summary>Factor where nothing tells which thing.</summary>
    public double Unnamed { get; init; } = 0.65;

    /// <summary>Factor where the condition is looked for in the place one stands in.</summary>
    public double Here { get; init; } = 1.12;

    /// <summary>Factor where it is not.</summary>
    public double Elsewhere { get; init; } = 0.97;

    /// <summary>What it costs that something could not be seen is said, and nothing better is.</summary>
    public double Unseen { get; init; } = 4;

    /// <summary>The same where it is not said what.</summary>
    public double UnseenAlone { get; init; } = 1.2;

    /// <summary>Factor within a lesson or a joke.</summary>
    public double Lesson { get; init; } = 0.56;

    /// <summary>So many words after a recap begins nothing is new.</summary>
    public int RecapWhole { get; init; } = 40;

    /// <summary>So many words after a recap begins a repeat is part of it.</summary>
    public int RecapReach { get; init; } = 120;

    /// <summary>What is said again within so many words is the same.</summary>
    public int Repeats { get; init; } = 25;

    /// <summary>What contradicts within so many words belongs to what it contradicts.</summary>
    public int Contradicts { get; init; } = 4;

    /// <summary>What each concept costs that the phrase does not speak of.</summary>
    public double Unsaid { get; init; } = 0.113;
}
