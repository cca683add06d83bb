using System.Collections.Concurrent;

namespace Purlin.Office.Sync;

/// <summary>One upload of a file at a time; the newest request ends the one before it, which is most likely a connection already dead.</summary>
internal sealed class UploadTurns
{
    private readonly ConcurrentDictionary<string, (SemaphoreSlim Gate, CancellationTokenSource Latest)> open = new();
    private readonly Lock turn = new();

    public async Task<Turn> Take(string sha, CancellationToken cancel)
    {
        SemaphoreSlim gate;
        var mine = new CancellationTokenSource();
        lock (turn)
        {
            if (open.TryGetValue(sha, out var before))
            {
                before.Latest.Cancel();
                gate = before.Gate;
            }
            else
            {
                gate = new SemaphoreSlim(1);
            }

            open[sha] = (gate, mine);
        }

        await gate.WaitAsync(cancel);
        return new Turn(this, sha, gate, mine);
    }

    internal sealed class Turn(UploadTurns turns, string sha, SemaphoreSlim gate, CancellationTokenSource mine) : IDisposable
    {
        /// <summary>Cancelled when a newer request for the same file arrives.</summary>
        public CancellationToken Newer => mine.Token;

        public void Dispose()
        {
            lock (turns.turn)
            {
                if (turns.open.TryGetValue(sha, out var latest) && latest.Latest == mine) turns.open.TryRemove(sha, out _);
            }

            gate.Release();
            mine.Dispose();
        }
    }
}
