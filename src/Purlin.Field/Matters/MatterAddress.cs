using Purlin.Judgement;

namespace Purlin.Field.Matters;

/// <summary>The address of a matter. Dots become commas, since a server takes a last part with a dot in it for a file.</summary>
public static class MatterAddress
{
    public static string List(string inspection) => $"/visit/{inspection}/matters";

    public static string Of(string inspection, FindingId finding) => $"/visit/{inspection}/matter/{Uri.EscapeDataString(finding.ToString().Replace('.', ','))}";

    public static string Read(string address) => Uri.UnescapeDataString(address).Replace(',', '.');
}
