using Purlin.Book;
using Purlin.Judgement;

namespace Purlin.Field.Matters;

/// <summary>What of a matter the inspector can put otherwise, by the words that the journal has for it.</summary>
public static class MatterParts
{
    public const string Weight = "weight";
    public const string Title = "title";
    public const string Text = "text";
    public const string Recommendation = "recommendation";
    public const string Trade = "trade";
    public const string LeftOut = "left out";

    public static IReadOnlyList<string> All { get; } = [Weight, Title, Text, Recommendation, Trade, LeftOut];

    /// <summary>The part as a person says it.</summary>
    public static string Said(string part) => part switch
    {
        Weight => "the weight",
        Title => "the title",
        Text => "why it matters",
        Recommendation => "what to do",
        Trade => "by whom",
        LeftOut => "left out",
        _ => part,
    };

    /// <summary>What stands there now.</summary>
    public static string Now(Finding finding, string part) => part switch
    {
        Weight => finding.Weight.Word(),
        Title => finding.Title,
        Text => finding.Matters,
        Recommendation => finding.Do,
        Trade => finding.Trade,
        _ => "",
    };

    /// <summary>What a weight asks of the reader.</summary>
    public static string Asks(Weight weight) => weight switch
    {
        Purlin.Book.Weight.MakeSafe => "Someone can be hurt.",
        Purlin.Book.Weight.ActNow => "Damage is under way or close; to settle before buying.",
        Purlin.Book.Weight.PutRight => "A defect to repair in the ordinary course.",
        Purlin.Book.Weight.KeepUp => "Upkeep.",
        _ => "No action; so that it is no surprise.",
    };
}
