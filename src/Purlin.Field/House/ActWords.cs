using Purlin.Field.Visits;
using Purlin.Journal;

namespace Purlin.Field.House;

/// <summary>An act in a few words, for the list of the last ones.</summary>
public static class ActWords
{
    public static string Of(EntryBody body, OpenVisit visit) => body.Told(new Called(
        place => visit.Inspection.Places.FirstOrDefault(one => one.Id == place)?.Name ?? "whole house",
        condition => visit.Book.Conditions.GetValueOrDefault(condition)?.Name));
}
