using System.Text;
using QRCoder;

namespace Purlin.Cli;

/// <summary>
/// The link that signs a device in once: as an address to open here, and as a code that a phone's camera reads off the screen.
/// </summary>
internal static class SignInLink
{
    /// <summary>The address; the code stands behind <c>#</c> and so is never sent to a server or written to its log.</summary>
    public static string Address(string office, string code) => $"{office.TrimEnd('/')}/office/enter#{code}";

    /// <summary>Prints both.</summary>
    public static void Print(Terminal terminal, string office, string code)
    {
        var address = Address(office, code);
        terminal.Out.WriteLine($"To sign in, open this once within half an hour: {address}");
        if (Uri.TryCreate(office, UriKind.Absolute, out var at) && !at.IsLoopback) terminal.Out.WriteLine(Picture(address));
    }

    /// <summary>
    /// Two rows of modules a line of text, light ones drawn: right on the dark ground that terminals mostly have, with the margin of four
    /// modules that ISO/IEC 18004 asks for.
    /// </summary>
    public static string Picture(string address)
    {
        using QRCodeGenerator generator = new();
        using var code = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        bool Light(int row, int column) => row >= rows.Count || !rows[row][column];
        StringBuilder text = new();
        for (var row = 0; row < rows.Count; row += 2)
        {
            for (var column = 0; column < rows[row].Count; column++)
                text.Append((Light(row, column),
                    Light(row + 1, column)) switch { (true, true) => '█', (true, false) => '▀', (false, true) => '▄', _ => ' ' });
            text.AppendLine();
        }
        return text.ToString();
    }
}
