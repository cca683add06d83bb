using System.Text.RegularExpressions;
using Purlin.Book;

namespace Purlin.Tests.Judgement;

/// <summary>Every text of the book that a person reads is American English. Ids keep their spelling: old journals hold them.</summary>
public sealed class AmericanEnglishLint
{
    // Spellings and words of Britain, as whole words; those after which a letter may follow end in \w*.
    private static readonly Regex British = new(
        @"\b(mould\w*|aluminium|\w*galvanised|fibres?|fibre\w+|grey\w*|(?<!feeder-)taps?|mend(s|ed|ing)?|storeys?|vapours?|\w*colour\w*|honour\w*|labour\w*|neighbour\w*|plough\w*|earth(ed|ing)?" +
        @"|fitted|rubbish|dear|pails?|whilst|centres?|centred|licence\w*|cupboards?|dustbin|kerb|tyres?|ageing|draughts?|programmes?|travell\w+|favour\w*|odours?|anew" +
        @"|\w+(organ|recogn|winter|crystall|real|util|summar)ised?|judgement\w*|renew(s|ed|ing|al)?|armoured|louvres?|levelled|labelled|metres?|sulphur|spanner|pavement|cheque|gaol" +
        @"|clean-out|relief pipe|half way|made good|round (the|it|its|a|that|their))\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    [Theory]
    [InlineData("Have the tap mended.", true)]
    [InlineData("Solid aluminium wire", true)]
    [InlineData("Knock on the tank: tapped on its side it should sound hollow.", false)]
    [InlineData("Have the faucet repaired.", false)]
    public void The_list_finds_what_is_British_and_leaves_the_rest(string text, bool found) => Assert.Equal(found, British.IsMatch(text));

    [Fact]
    public void Every_text_of_the_book_is_American()
    {
        var wrong = Texts().Where(text => British.IsMatch(text.Text)).Select(text => $"{text.Where}: {text.Text}").ToList();
        Assert.True(wrong.Count == 0, $"{wrong.Count}:\n{string.Join('\n', wrong.Take(40))}");
    }

    private static IEnumerable<(string Where, string Text)> Texts()
    {
        var book = RuleBook.BuiltIn;
        foreach (var condition in book.Conditions.Values)
        {
            foreach (var text in (string[])[condition.Name, condition.Means, condition.Leads, condition.Clears, condition.Do, .. condition.Signs]) yield return (condition.Id, text);
            foreach (var follow in condition.Look)
                foreach (var text in (string[])[follow.Ask, follow.Refer]) yield return ($"{condition.Id}/{follow.Id}", text);
        }
        foreach (var limitation in book.Limitations.Values)
            foreach (var text in (string[])[limitation.What, limitation.Next, .. limitation.Reasons]) yield return (limitation.Id, text);
        foreach (var profile in book.Profiles)
            foreach (var text in (string[])[profile.Title, profile.Reason, profile.Look]) yield return (profile.Id, text);
        foreach (var cause in book.Causes)
            foreach (var text in (string[])[cause.Title, cause.Means, cause.Do ?? ""]) yield return (cause.Id, text);
        foreach (var (key, sentence) in book.Words.Sentences) yield return (key, sentence);
        foreach (var (key, sentence) in book.Cautions) yield return (key, sentence);
    }
}
