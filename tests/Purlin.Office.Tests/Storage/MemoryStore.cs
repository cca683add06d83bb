using System.Collections.Concurrent;
using Purlin.Journal;
using Purlin.Office.Pictures;
using Purlin.Office.Storage;

namespace Purlin.Office.Tests.Storage;

/// <summary>The two contracts kept in memory: what shows that they ask for nothing that only a database or a disk has.</summary>
internal sealed class MemoryStore
{
    private readonly ConcurrentDictionary<Tenant, Kept> tenants = [];

    public IJournals Journals(Tenant tenant) => new MemoryJournals(tenants.GetOrAdd(tenant, _ => new Kept()));

    public IBlobs Blobs(Tenant tenant) => new MemoryBlobs(tenants.GetOrAdd(tenant, _ => new Kept()));

    public void Spoil(Tenant tenant, string sha, byte[]? bytes)
    {
        var kept = tenants[tenant];
        if (bytes is null) kept.Whole.Remove(sha);
        else kept.Whole[sha] = (bytes, kept.Whole[sha].Type, kept.Whole[sha].HashedAt);
    }

    private sealed class Kept
    {
        public Lock Turn { get; } = new();

        public Dictionary<string, Shelved> Journals { get; } = [];

        public List<(string Insp, byte[] Raw)> Receipts { get; } = [];

        public Dictionary<string, (byte[] Bytes, string Type, DateTimeOffset HashedAt)> Whole { get; } = [];

        public Dictionary<string, List<byte>> Parts { get; } = [];
    }

    private sealed class Shelved
    {
        public List<KeptLine> Lines { get; set; } = [];

        public List<IssuedEdition> Editions { get; } = [];

        public Outline? Outline { get; set; }

        public DateTimeOffset At { get; set; }

        public DateTimeOffset? KeepUntil { get; set; }

        public DateTimeOffset? ErasedAt { get; set; }
    }

    private sealed class MemoryJournals(Kept kept) : IJournals
    {
        private Shelved Of(string inspection) => kept.Journals.GetValueOrDefault(inspection) ?? new Shelved();

        public Task<JournalHeads> Heads(string inspection, CancellationToken cancel)
        {
            lock (kept.Turn)
            {
                var one = Of(inspection);
                return Task.FromResult(one.Outline is null ? JournalHeads.None : new JournalHeads
                {
                    Root = one.Outline.Root,
                    Position = one.Lines.Count,
                    Held = one.Outline.Held,
                    Heads = one.Outline.Heads,
                    Receipt = kept.Receipts.LastOrDefault(receipt => receipt.Insp == inspection).Raw,
                    KeepUntil = one.KeepUntil,
                    ErasedAt = one.ErasedAt,
                });
            }
        }

        public Task<IReadOnlyList<KeptLine>> Read(string inspection, int after, CancellationToken cancel)
        {
            lock (kept.Turn) return Task.FromResult<IReadOnlyList<KeptLine>>([.. Of(inspection).Lines.Skip(after)]);
        }

        public Task<bool> Append(Appending what)
        {
            lock (kept.Turn)
            {
                if (!kept.Journals.TryGetValue(what.Inspection, out var one)) kept.Journals[what.Inspection] = one = new Shelved();
                if ((one.Outline?.Root ?? "") != what.Expected) return Task.FromResult(false);
                foreach (var (_, entry) in what.Taken) one.Lines.Add(new KeptLine(one.Lines.Count + 1, entry.Line.ToArray(), null));
                foreach (var line in what.Held) one.Lines.Add(new KeptLine(one.Lines.Count + 1, line.Raw.ToArray(), string.Join("; ", line.Why)));
                kept.Receipts.Add((what.Inspection, what.Sign(new ReceiptLink(kept.Receipts.Count + 1, kept.Receipts is [.., var last] ? last.Raw : null))));
                if (what.Edition is { } edition) one.Editions.Add(edition);
                (one.Outline, one.At) = (what.Outline, what.At);
                return Task.FromResult(true);
            }
        }

        public Task<IReadOnlyList<byte[]>> Receipts(string inspection, CancellationToken cancel)
        {
            lock (kept.Turn) return Task.FromResult<IReadOnlyList<byte[]>>([.. kept.Receipts.Where(receipt => receipt.Insp == inspection).Select(receipt => receipt.Raw)]);
        }

        public Task<IReadOnlyList<IssuedEdition>> Editions(string inspection, CancellationToken cancel)
        {
            lock (kept.Turn) return Task.FromResult<IReadOnlyList<IssuedEdition>>([.. Of(inspection).Editions]);
        }

        public Task<InspectionPage> List(ListAsk ask, CancellationToken cancel)
        {
            lock (kept.Turn)
            {
                var words = (ask.Search ?? "").ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
                var found = kept.Journals.Where(one => words.All(word => $"{one.Value.Outline!.Address} {one.Value.Outline.Date} {one.Key}".ToLowerInvariant().Contains(word, StringComparison.Ordinal)))
                    .OrderByDescending(one => one.Value.Outline!.Date, StringComparer.Ordinal).ThenBy(one => one.Key, StringComparer.Ordinal).ToList();
                return Task.FromResult(new InspectionPage([.. found.Skip(ask.Skip).Take(ask.Count ?? int.MaxValue).Select(one => Listed(one.Key, one.Value))], found.Count));
            }
        }

        private Listed Listed(string id, Shelved one) => new()
        {
            Id = id,
            Address = one.Outline!.Address,
            Date = one.Outline.Date,
            Demo = one.Outline.Demo,
            Entries = one.Outline.Entries,
            Held = one.Outline.Held,
            Photos = one.Outline.Photos.Count,
            PhotosHere = one.Outline.Photos.Count(kept.Whole.ContainsKey),
            Editions = one.Outline.Editions,
            LastReceived = Instant.Seconds(one.At),
            Erased = one.ErasedAt is { } when ? Instant.Seconds(when) : null,
        };

        public Task<IReadOnlySet<string>> Shown(IReadOnlyCollection<string> hashes, CancellationToken cancel)
        {
            lock (kept.Turn) return Task.FromResult<IReadOnlySet<string>>(kept.Journals.Values.SelectMany(one => one.Outline!.Photos).Intersect(hashes).ToHashSet());
        }

        public Task KeepUntil(string inspection, DateTimeOffset until)
        {
            lock (kept.Turn) kept.Journals[inspection].KeepUntil = until;
            return Task.CompletedTask;
        }

        public Task<bool> Erase(string inspection, DateTimeOffset now)
        {
            lock (kept.Turn)
            {
                var one = Of(inspection);
                if (one.KeepUntil is not { } until || until > now || one.ErasedAt is not null) return Task.FromResult(false);
                (one.ErasedAt, one.Outline) = (now, one.Outline! with { Address = "", Photos = [] });
                one.Lines = [.. one.Lines.Select(line => line with { Raw = [], Why = line.Why is null ? null : "" })];
                return Task.FromResult(true);
            }
        }
    }

    private sealed class MemoryBlobs(Kept kept) : IBlobs
    {
        public Task<IReadOnlyDictionary<string, Blob>> Has(IReadOnlyCollection<string> hashes, CancellationToken cancel) =>
            Task.FromResult<IReadOnlyDictionary<string, Blob>>(hashes.Where(IsWhole).ToDictionary(sha => sha, sha => new Blob(sha, kept.Whole[sha].Bytes.Length, kept.Whole[sha].Type)));

        public Task<Stream?> Open(string sha, CancellationToken cancel) => Task.FromResult<Stream?>(IsWhole(sha) ? new MemoryStream(kept.Whole[sha].Bytes, writable: false) : null);

        public Task<long> Arrived(string sha, CancellationToken cancel) => Task.FromResult<long>(kept.Parts.GetValueOrDefault(sha)?.Count ?? 0);

        public async Task Part(string sha, Stream bytes, long atMost, CancellationToken cancel)
        {
            using MemoryStream all = new();
            await bytes.CopyToAsync(all, cancel);
            if (all.Length > atMost) throw new Microsoft.AspNetCore.Http.BadHttpRequestException("more bytes than announced", 413);
            if (!kept.Parts.TryGetValue(sha, out var part)) kept.Parts[sha] = part = [];
            part.AddRange(all.ToArray());
        }

        public Task<PartRefusal?> Finish(string sha, CancellationToken cancel)
        {
            byte[] bytes = [.. kept.Parts[sha]];
            kept.Parts.Remove(sha);
            if (Sha.Of(bytes) != sha) return Task.FromResult<PartRefusal?>(new PartRefusal(OtherBytes: true));
            if (PictureKind.Kind(new MemoryStream(bytes)) is not { } type) return Task.FromResult<PartRefusal?>(new PartRefusal(OtherBytes: false));
            kept.Whole[sha] = (bytes, type, DateTimeOffset.UtcNow);
            return Task.FromResult<PartRefusal?>(null);
        }

        public Task Keep(string sha, ReadOnlyMemory<byte> bytes, string mediaType)
        {
            kept.Whole[sha] = (bytes.ToArray(), mediaType, DateTimeOffset.UtcNow);
            return Task.CompletedTask;
        }

        public Task Remove(string sha)
        {
            kept.Whole.Remove(sha);
            return Task.CompletedTask;
        }

        public Task<ScrubResult> Scrub(DateTimeOffset before, CancellationToken cancel)
        {
            var due = kept.Whole.Where(one => one.Value.HashedAt <= before).Select(one => one.Key).ToList();
            return Task.FromResult(new ScrubResult(due.Count, [.. due.Where(sha => !IsWhole(sha))]));
        }

        private bool IsWhole(string sha)
        {
            if (!kept.Whole.TryGetValue(sha, out var one)) return false;
            if (Sha.Of(one.Bytes) == sha) return true;
            kept.Whole.Remove(sha);
            return false;
        }
    }
}
