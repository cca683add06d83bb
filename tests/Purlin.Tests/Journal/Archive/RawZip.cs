using System.Buffers.Binary;
using System.Text;

namespace Purlin.Tests.Journal.Archive;

/// <summary>Writes zips byte by byte, so that a test can claim in them what no library would.</summary>
internal sealed class RawZip
{
    private readonly MemoryStream body = new();
    private readonly MemoryStream list = new();
    private int count;

    public RawZip Add(string name, byte[] bytes, uint? claims = null, ushort method = 0, ushort flags = 0, uint attributes = 0)
    {
        var offset = (uint)body.Length;
        var plain = Encoding.Latin1.GetBytes(name);
        var size = claims ?? (uint)bytes.Length;
        body.Write([.. "PK\x03\x04"u8, 20, 0]);
        Write(body, flags, method, (ushort)0, (ushort)33, 0u, (uint)bytes.Length, size, (ushort)plain.Length, (ushort)0);
        body.Write(plain);
        body.Write(bytes);
        list.Write([.. "PK\x01\x02"u8, 20, 0, 20, 0]);
        Write(list, flags, method, (ushort)0, (ushort)33, 0u, (uint)bytes.Length, size, (ushort)plain.Length, (ushort)0, (ushort)0, (ushort)0, (ushort)0, attributes, offset);
        list.Write(plain);
        count++;
        return this;
    }

    public MemoryStream End(int? says = null)
    {
        var from = (uint)body.Length;
        list.WriteTo(body);
        body.Write("PK\x05\x06"u8);
        Write(body, (ushort)0, (ushort)0, (ushort)(says ?? count), (ushort)(says ?? count), (uint)list.Length, from, (ushort)0);
        body.Position = 0;
        return body;
    }

    private static void Write(Stream to, params object[] numbers)
    {
        Span<byte> bytes = stackalloc byte[4];
        foreach (var number in numbers)
        {
            if (number is ushort little)
            {
                BinaryPrimitives.WriteUInt16LittleEndian(bytes, little);
                to.Write(bytes[..2]);
            }
            else
            {
                BinaryPrimitives.WriteUInt32LittleEndian(bytes, (uint)number);
                to.Write(bytes);
            }
        }
    }
}
