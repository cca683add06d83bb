using System.Net;
using System.Net.Sockets;

namespace Purlin.Office.Owner;

/// <summary>
/// Wrong codes by address: five a minute, then waiting. It keeps noise down and nobody out: a right code is never asked to wait, so no stranger can lock the
/// owner out. Codes are too long to guess.
/// </summary>
public sealed class SignInLimits(OfficeOptions office)
{
    private const int Tries = 5;
    private const int MostAddresses = 10_000;
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    private readonly Lock turn = new();
    private readonly Dictionary<IPAddress, Queue<DateTimeOffset>> wrong = [];

    /// <summary>Notes a wrong code, and gives how long this address waits now; none while it may go on.</summary>
    public TimeSpan? Wrong(IPAddress? from)
    {
        var now = office.Clock.GetUtcNow();
        var key = Key(from);
        lock (turn)
        {
            if (wrong.Count >= MostAddresses && !wrong.ContainsKey(key)) Clear(now);
            if (!wrong.TryGetValue(key, out var tries)) wrong[key] = tries = [];
            while (tries.TryPeek(out var first) && now - first > Window) tries.Dequeue();
            if (tries.Count >= Tries) return tries.Peek() + Window - now;
            tries.Enqueue(now);
            return null;
        }
    }

    private void Clear(DateTimeOffset now)
    {
        foreach (var (address, tries) in wrong.ToList())
        {
            if (tries.Count == 0 || now - tries.Last() > Window) wrong.Remove(address);
        }

        // So many at once are one attack: they start afresh rather than fill the memory.
        if (wrong.Count >= MostAddresses) wrong.Clear();
    }

    /// <summary>One household has a whole /64 of the new addresses; any of them is the same caller.</summary>
    private static IPAddress Key(IPAddress? from)
    {
        if (from is null) return IPAddress.None;
        if (from.IsIPv4MappedToIPv6) return from.MapToIPv4();
        if (from.AddressFamily != AddressFamily.InterNetworkV6) return from;
        var bytes = from.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new IPAddress(bytes);
    }
}
