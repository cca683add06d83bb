using Purlin.Book;
using Purlin.Book.Looking;

namespace Purlin.Judgement.Looking;

/// <summary>How early one condition is looked for in one place: the chance that it is there times the harm it does, and why.</summary>
internal sealed class LookScore
{
    private const double Asked = 4;
    private const double ExpectedHere = 3;
    private const double OfItsMaterial = 4;
    private const double SeenElsewhere = 1.8;
    private const double OfOneCause = 3;
    private const double OnRecord = 2;

    private readonly LookGround ground;
    private readonly Profile? expected;
    private readonly double share;
    private readonly bool elsewhere;
    private readonly string? ofOneCause;

    public LookScore(LookGround ground, LookPlace place, Condition condition)
    {
        (this.ground, Condition) = (ground, condition);
        var here = place.Here(condition.Component);
        if (!ground.CanShow(condition, here)) return;
        AskedBy = place.AskedBy(condition.Id);
        expected = ground.Expected(condition.Id);
        elsewhere = ground.Seen.Contains(condition.Id);
        ofOneCause = ground.SeenOfItsCause(condition.Id);
        share = ground.Book.Often.GetValueOrDefault(condition.Id)?.Share(ground.Built) ?? Often.Share(Often.Unsaid);
        var chance = share * (expected is null ? 1 : ExpectedHere) * (elsewhere ? SeenElsewhere : 1) * (ofOneCause is null ? 1 : OfOneCause)
            * (AskedBy is null ? 1 : Asked) * (ground.IsOfItsMaterial(condition, here) ? OfItsMaterial : 1) * (here.Count > 0 ? OnRecord : 1)
            * place.InMind(condition.Id);
        Here = place.Share(condition.Component);
        Chance = chance * Here;
    }

    /// <summary>What is looked for.</summary>
    public Condition Condition { get; }

    /// <summary>How likely it is met here, against other looks; zero for what cannot be here. Only the order means anything.</summary>
    public double Chance { get; }

    /// <summary>The chance with the harm: each bar of the weight counts as being so many times likelier.</summary>
    public double Times(double harm) => Chance * Math.Pow(harm, (int)Condition.Weight.InOnePlace());

    /// <summary>The chance that a thing of its kind stands here.</summary>
    public double Here { get; }

    /// <summary>The open question that it would answer.</summary>
    public LooseEnd? AskedBy { get; }

    /// <summary>Why it stands where it stands, the strongest reason first.</summary>
    public IReadOnlyList<string> Because()
    {
        var words = ground.Book.Words;
        List<string> because = [];
        if (AskedBy is { } end) because.Add(words.Say("look.asked", ("because", end.Because), ("question", end.Question)));
        if (elsewhere) because.Add(words.Say("look.elsewhere"));
        if (ofOneCause is not null) because.Add(words.Say("look.cause", ("condition", ground.Book.Conditions[ofOneCause].Name)));
        if (expected is not null) because.Add(words.Say("look.expected", ("title", expected.Title), ("reason", expected.Reason)));
        if (share >= Often.Share(4)) because.Add(words.Say("look.often"));
        because.Add(words.Say("weight.consequence." + Condition.Weight.Consequence));
        return because;
    }
}
