using Purlin.Office.Owner;

namespace Purlin.Cli;

/// <summary>The link that signs a device in once, on a terminal.</summary>
internal static class LinkPrint
{
    /// <summary>Prints it as an address, and for an address that others reach as a code for a phone's camera too.</summary>
    public static void Print(Terminal terminal, string office, string code)
    {
        var address = SignInLink.Address(office, code);
        terminal.Out.WriteLine($"To sign in, open this once within half an hour: {address}");
        if (Uri.TryCreate(office, UriKind.Absolute, out var at) && !at.IsLoopback) terminal.Out.WriteLine(SignInLink.Picture(address));
    }
}
