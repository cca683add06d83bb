namespace Purlin.Journal.Fold;

/// <summary>
/// One list of the inspection: how it is made of the lines that stand. Each list stands beside the things it holds
/// (<c>Inspection.Places.cs</c> and so on), and a kind of entry names those it has a part in, so that an act makes again what it touches
/// and nothing else.
/// </summary>
internal sealed partial class Gathered
{
    private readonly Func<State, Inspection, Inspection> into;

    private Gathered(Func<State, Inspection, Inspection> into) => this.into = into;

    /// <summary>The inspection with this list made anew.</summary>
    public Inspection Into(Inspection inspection, State state) => into(state, inspection);
}
