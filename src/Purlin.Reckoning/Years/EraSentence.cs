namespace Purlin.Reckoning.Years;

/// <summary>What a report prints about a rule and a year: then, now, and the hazard whatever the rule. Short sentences for a buyer.</summary>
internal static class EraSentence
{
    /// <param name="era">The rule.</param>
    /// <param name="year">Year installed.</param>
    /// <param name="adopted">Year of local adoption, where known.</param>
    /// <param name="then">Whether it applied then; none where the years do not decide.</param>
    public static string Of(Era era, int year, int? adopted, bool? then) =>
        string.Join(' ', new[] { era.RequiredNow == "no longer used" ? Material(era, year, then) : Then(era, year, adopted, then), Now(era), era.Hazard }.Where(part => !string.IsNullOrEmpty(part)));

    /// <summary>The part about then: up to the second full stop.</summary>
    public static string First(string sentence)
    {
        var end = sentence.IndexOf(". ", StringComparison.Ordinal);
        var second = end < 0 ? -1 : sentence.IndexOf(". ", end + 2, StringComparison.Ordinal);
        return second < 0 ? sentence : sentence[..(second + 1)];
    }

    private static string Then(Era era, int year, int? adopted, bool? then)
    {
        var verb = era.RequiredNow == "permitted" ? ("permitted", "It was permitted", "It was not permitted") : ("asked for", "It was asked for", "It was not asked for");
        if (adopted is { } here) return $"This place has {verb.Item1} {era.What} since {here}. {(then == true ? $"{verb.Item2} {ThenAndNow.Installed} {year}." : $"{verb.Item3} {ThenAndNow.Installed} {year}.")}";
        if (era.FirstYear is null) return $"The rules have long {verb.Item1} {era.What}. No source gives the first year, so what applied in {year} is not known.";
        if (era.UsualLagYears == 0) return Law(era, year, then);
        var since = $"The model code ({era.Rule}) has {verb.Item1} {era.What} {Since(era)}.";
        return then switch
        {
            false => $"{since} {verb.Item3} {ThenAndNow.Installed} {year}.",
            true => $"{since} {verb.Item2} {ThenAndNow.Installed} {year}, unless this place had struck it out.",
            null => $"{since} Places adopt a rule some years later, so what applied here in {year} is not known.",
        };
    }

    // A law or a date of the market holds everywhere from its day.
    private static string Law(Era era, int year, bool? then)
    {
        var (first, by) = (era.RequiredNow == "later" ? "From" : "Since", era.Rule == "market" ? "" : $" by {era.Rule}");
        var span = era.FirstYear == era.FirstYearLatest ? $"{era.FirstYear}" : $"{era.FirstYear} or, as other sources have it, {era.FirstYearLatest}";
        return $"{first} {span}{by}: {era.What}. {then switch
        {
            false => $"That did not apply {ThenAndNow.Installed} {year}.",
            true => $"That applied {ThenAndNow.Installed} {year}.",
            null => $"It came in at about that time, so what applied in {year} is not known.",
        }}";
    }

    private static string Material(Era era, int year, bool? then) => $"Dated {(era.FirstYear == era.FirstYearLatest ? $"{era.FirstYear}" : $"{era.FirstYear} to {era.FirstYearLatest}")}: {era.What}. {then switch
    {
        false => $"In {year} it was still in use.",
        true => $"By {year} it was no longer in use: one that is here was made before, or came from another house.",
        null => $"In {year} it was going out of use.",
    }}";

    private static string Now(Era era) => era.RequiredNow switch
    {
        "yes" => era.UsualLagYears == 0 ? "It stands today." : "It is asked for in new work today.",
        "no" => "It is no longer the rule today.",
        "when work is done" => "Today it is asked for when this part is changed or replaced.",
        "permitted" => "It is allowed today, not asked for.",
        "partly" => "Part of it stands today.",
        "later" => "It is not in force yet.",
        "where adopted" => "Today it is asked for where a place has taken it up.",
        _ => "",
    };

    private static string Since(Era era) => era.FirstYear == era.FirstYearLatest ? $"since {era.FirstYear}" : $"since {era.FirstYear} or, as other sources have it, {era.FirstYearLatest}";
}
