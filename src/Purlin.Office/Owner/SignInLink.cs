using System.Collections;
using System.Globalization;
using System.Text;
using QRCoder;

namespace Purlin.Office.Owner;

/// <summary>
/// The link that signs a device in once: as an address to open here, and as a code that a phone's camera reads off the screen.
/// </summary>
public static class SignInLink
{
    /// <summary>The address; the code stands behind <c>#</c> and so is never sent to a server or written to its log.</summary>
    public static string Address(string office, string code) => $"{office.TrimEnd('/')}/office/enter#{code}";

    /// <summary>
    /// Two rows of modules a line of text, light ones drawn: right on the dark ground that terminals mostly have, with the margin of four
    /// modules that ISO/IEC 18004 asks for.
    /// </summary>
    public static string Picture(string address)
    {
        var rows = Modules(address);
        bool Light(int row, int column) => row >= rows.Count || !rows[row][column];
        StringBuilder text = new();
        for (var row = 0; row < rows.Count; row += 2)
        {
            for (var column = 0; column < rows[row].Count; column++)
                text.Append((Light(row, column),
                    Light(row + 1, column)) switch
                { (true, true) => '█', (true, false) => '▀', (false, true) => '▄', _ => ' ' });
            text.AppendLine();
        }
        return text.ToString();
    }

    /// <summary>The same as the path of a drawing, dark modules drawn, one unit each, and how many units it is wide and high, its margin counted.</summary>
    public static (int Size, string Path) Drawing(string address)
    {
        var rows = Modules(address);
        StringBuilder path = new();
        for (var row = 0; row < rows.Count; row++)
            for (var column = 0; column < rows[row].Count; column++)
                if (rows[row][column]) path.Append(CultureInfo.InvariantCulture, $"M{column} {row}h1v1h-1z");
        return (rows.Count, path.ToString());
    }

    private static List<BitArray> Modules(string address)
    {
        using QRCodeGenerator generator = new();
        using var code = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        return code.ModuleMatrix;
    }
}
