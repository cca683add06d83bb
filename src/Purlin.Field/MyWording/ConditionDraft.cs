using Purlin.Book;

namespace Purlin.Field.MyWording;

/// <summary>A condition of one's own while it is being written.</summary>
public sealed class ConditionDraft
{
    public static IReadOnlyList<string> Consequences { get; } = ["someone can be hurt", "it damages the house", "something does not work", "upkeep", "no harm"];

    public static IReadOnlyList<string> Timings => WordTable.Words<Timing>();

    public string Name { get; set; } = "";

    public string Component { get; set; } = "";

    public string System { get; set; } = "";

    public List<string> Places { get; } = [];

    public string Words { get; set; } = "";

    public string Signs { get; set; } = "";

    public string Means { get; set; } = "";

    public string Leads { get; set; } = "";

    public string Do { get; set; } = "";

    public string Clears { get; set; } = "";

    public string Trade { get; set; } = "";

    public string Consequence { get; set; } = Consequences[2];

    public string Timing { get; set; } = "now";

    public bool MoreInSeveral { get; set; }

    public bool MoreThroughout { get; set; }

    public List<QuestionDraft> Questions { get; } = [];

    // What this form does not show stays as it was.
    private Condition? before;

    public static ConditionDraft Of(Condition own)
    {
        var draft = new ConditionDraft
        {
            Name = own.Name,
            Component = own.Component,
            System = own.System,
            Words = string.Join(", ", own.Words),
            Signs = string.Join("; ", own.Signs),
            Means = own.Means,
            Leads = own.Leads,
            Do = own.Do,
            Clears = own.Clears,
            Trade = own.Trade,
            Consequence = Consequences[(int)own.Weight.Consequence],
            Timing = own.Weight.Timing.Word(),
            MoreInSeveral = own.Weight.Several == Lift.Raise,
            MoreThroughout = own.Weight.Throughout == Lift.Raise,
            before = own,
        };
        draft.Places.AddRange(own.Places);
        draft.Questions.AddRange(own.Look.Select(QuestionDraft.Of));
        return draft;
    }

    public void Ask()
    {
        for (var number = 1; ; number++)
        {
            if (Questions.Exists(question => question.Id == $"q{number}")) continue;
            Questions.Add(new QuestionDraft { Id = $"q{number}" });
            return;
        }
    }

    public Condition ToCondition(string id) => (before ?? new Condition { Id = id, Name = "", Means = "", Do = "", Trade = "", Weight = new WeightRule { Consequence = Purlin.Book.Consequence.Function } }) with
    {
        Id = id,
        Name = Name.Trim(),
        Component = Component.Trim(),
        System = System,
        Places = [.. Places],
        Words = Split(Words, ','),
        Signs = Split(Signs, ';'),
        Means = Means.Trim(),
        Leads = Leads.Trim(),
        Do = Do.Trim(),
        Clears = Clears.Trim(),
        Trade = Trade,
        Weight = (before?.Weight ?? new WeightRule { Consequence = default }) with
        {
            Consequence = (Consequence)Consequences.ToList().IndexOf(Consequence),
            Timing = WordTable.Read<Timing>(Timing) ?? default,
            Several = MoreInSeveral ? Lift.Raise : Lift.Same,
            Throughout = MoreThroughout ? Lift.Raise : Lift.Same,
        },
        Look = [.. Questions.Select(question => question.ToFollow(id, Trade, before?.Trade))],
        Own = true,
    };

    private static string[] Split(string text, char at) => text.Split(at, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}

/// <summary>A question of one's own while it is being written.</summary>
public sealed class QuestionDraft
{
    public required string Id { get; init; }

    public string Ask { get; set; } = "";

    public string Refer { get; set; } = "";

    public List<string> In { get; } = [];

    /// <summary>The condition of which a look answers it; empty for the condition itself, in another place.</summary>
    public string Answer { get; set; } = "";

    public bool Blocks { get; set; }

    // What this form does not show stays as it was.
    private Follow? before;

    public static QuestionDraft Of(Follow follow)
    {
        var draft = new QuestionDraft { Id = follow.Id, Ask = follow.Ask, Refer = follow.Refer, Answer = follow.Answers.Count > 0 ? follow.Answers[0] : "", Blocks = follow.Block, before = follow };
        draft.In.AddRange(follow.In);
        return draft;
    }

    /// <summary>A question is handed to the trade of its condition, unless it was written for another one.</summary>
    public Follow ToFollow(string condition, string trade, string? tradeBefore)
    {
        var answer = Answer.Length > 0 ? Answer : condition;
        return (before ?? new Follow { Id = Id, Ask = "", Refer = "", Trade = trade }) with
        {
            Ask = Ask.Trim(),
            Refer = Refer.Trim(),
            In = [.. In],
            Block = Blocks,
            Trade = before is null || before.Trade == tradeBefore ? trade : before.Trade,
            Answers = before is { Answers.Count: > 1 } && before.Answers.Contains(answer) ? before.Answers : [answer],
        };
    }
}
