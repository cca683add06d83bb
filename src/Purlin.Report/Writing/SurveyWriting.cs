using Purlin.Journal.Fold;

namespace Purlin.Report.Writing;

/// <summary>A set of readings with places on a plan: a floor survey.</summary>
internal static class SurveyWriting
{
    public static IEnumerable<Block> Of(Record record, IReadOnlyList<Reading> survey)
    {
        yield return new Block.Heading($"{Phrase.Sentence(survey[0].Body.Kind)}: {survey.Count} points");
    }
}
