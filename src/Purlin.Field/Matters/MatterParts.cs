using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Field.Matters;

/// <summary>What of a matter the inspector can put otherwise.</summary>
public static class MatterParts
{
    /// <summary>The parts that the screen of a matter offers.</summary>
    public static IReadOnlyList<FindingPart> All { get; } =
        [FindingPart.Weight, FindingPart.Title, FindingPart.Text, FindingPart.Recommendation, FindingPart.Trade, FindingPart.LeftOut];

    /// <summary>The part as a person says it; a word of a newer program as it stands.</summary>
    public static string Said(string part) => WordTable.Read<FindingPart>(part) is { } known ? Said(known) : part;

    /// <summary>The part as a person says it.</summary>
    public static string Said(FindingPart part) => part switch
    {
        FindingPart.Weight => "the weight",
        FindingPart.Title => "the title",
        FindingPart.Text => "why it matters",
        FindingPart.Recommendation => "what to do",
        FindingPart.Trade => "by whom",
        FindingPart.LeftOut => "left out",
        _ => part.Word(),
    };

    /// <summary>What stands there now.</summary>
    public static string Now(Finding finding, FindingPart part) => part switch
    {
        FindingPart.Weight => finding.Weight.Word(),
        FindingPart.Title => finding.Title,
        FindingPart.Text => finding.Matters,
        FindingPart.Recommendation => finding.Do,
        FindingPart.Trade => finding.Trade,
        _ => "",
    };

    /// <summary>What a weight asks of the reader.</summary>
    public static string Asks(Weight weight) => weight switch
    {
        Weight.MakeSafe => "Someone can be hurt.",
        Weight.ActNow => "Damage is under way or close; to settle before buying.",
        Weight.PutRight => "A defect to repair in the ordinary course.",
        Weight.KeepUp => "Upkeep.",
        _ => "No action; so that it is no surprise.",
    };
}
