namespace Purlin.Field.MyWording;

/// <summary>The addresses of own wording. Dots become commas, since a server takes a last part with a dot in it for a file.</summary>
public static class WordingAddress
{
    public const string All = "/wording";

    public const string NewCondition = "/wording/condition";

    /// <summary>The sentences behind a matter or a thing to look for, in an inspection.</summary>
    public static string Behind(string inspection, string id) => $"/visit/{inspection}/wording/{Uri.EscapeDataString(id.Replace('.', ','))}";

    public static string Condition(string id) => $"/wording/condition/{Uri.EscapeDataString(id.Replace('.', ','))}";

    public static string Read(string address) => Uri.UnescapeDataString(address).Replace(',', '.');
}
