using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Purlin.Journal;

namespace Purlin.Reckoning.Air.Plate;

/// <summary>Model and serial numbers: taken as they stand, never mended, for there a letter is as likely as a digit.</summary>
internal static partial class PlateIdentity
{
    internal static PlateField? Find(PlateText text, string name, int least)
    {
        foreach (var segment in text.Behind(name))
        {
            var match = Value().Match(segment);
            if (!match.Success) continue;
            var value = match.Groups["value"].Value.TrimEnd('-', '/');
            if (value.Length < least || !value.Any(char.IsAsciiDigit)) continue;
            var doubt = value.IndexOfAny(['0', 'O', '1', 'I', 'L', '5', 'S', '8', 'B']) >= 0;
            return new PlateField(JsonValue.Create(value), "", doubt
                ? "likely" : "clear", new("nameplate.reason.identity", ("label", Words.Of(name)), ("doubt", doubt ? "yes" : "no")), value);
        }
        return null;
    }

    [GeneratedRegex(@"^[\s:;.,#=-]{0,12}(?<value>[A-Z0-9][A-Z0-9/-]{2,29})(?![A-Z0-9])",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Value();
}
