namespace Purlin.Hearing.Figures;

/// <summary>SpokenUnits as they are spoken.</summary>
internal static class SpokenUnits
{
    public const string Inch = "in", Foot = "ft", Percent = "%", Degree = "°F", Psi = "psi", Amp = "A", Gallon = "gal", Ton = "tons",
        Btu = "Btu/h", Ppm = "ppm", Volt = "V", Gpm = "gpm", Year = "years", Pascal = "Pa";

    private static readonly Dictionary<string, string> One = new(StringComparer.Ordinal)
    {
        ["inch"] = Inch,
        ["inches"] = Inch,
        ["foot"] = Foot,
        ["feet"] = Foot,
        ["percent"] = Percent,
        ["degrees"] = Degree,
        ["degree"] = Degree,
        ["psi"] = Psi,
        ["pounds"] = Psi,
        ["amp"] = Amp,
        ["amps"] = Amp,
        ["ampere"] = Amp,
        ["gallon"] = Gallon,
        ["gallons"] = Gallon,
        ["ton"] = Ton,
        ["tons"] = Ton,
        ["btu"] = Btu,
        ["btuh"] = Btu,
        ["btus"] = Btu,
        ["ppm"] = Ppm,
        ["volts"] = Volt,
        ["volt"] = Volt,
        ["gpm"] = Gpm,
        ["years"] = Year,
        ["year"] = Year,
        ["pascals"] = Pascal,
        ["pascal"] = Pascal,
    };

    private static readonly (string[] Words, string Unit)[] Several =
    [
        (["b", "t", "u", "h"], Btu), (["b", "t", "u"], Btu), (["p", "p", "m"], Ppm), (["p", "s", "i"], Psi),
            (["parts", "per", "million"], Ppm), (["gallons", "a", "minute"], Gpm), (["gallons", "per", "minute"], Gpm),
    ];

    /// <summary>The unit that stands here, and how many words it takes; none for no unit.</summary>
    public static (string Unit, int Taken)? At(List<string> texts, int at)
    {
        foreach (var (words, unit) in Several)
            if (at + words.Length <= texts.Count && words.Index().All(word => texts[at + word.Index] == word.Item)) return (unit,
                words.Length);
        return at < texts.Count && One.TryGetValue(texts[at], out var one) ? (one, 1) : null;
    }
}
