using System.Text.Json;
using Purlin.Journal.Fold;

namespace Purlin.Journal;

public abstract partial record EntryBody
{
    /// <summary>
    /// An entry is offered by a reader of plates, words or files. It says nothing of the house by itself: the inspector takes it, by an
    /// entry that names it as its <see cref="Origin"/>, or drops it.
    /// </summary>
    public sealed record ProposalMade : EntryBody
    {
        private const int Most = 16;

        /// <summary>Type of the entry offered.</summary>
        public required string Entry { get; init; }

        /// <summary>Its body, as it would be written.</summary>
        public required JsonElement Body { get; init; }

        /// <summary>What it was read from.</summary>
        public IReadOnlyList<ReadFrom> From { get => field ?? []; init; }

        /// <summary>How sure the reader is, 0 to 1.</summary>
        public required double Confidence { get; init; }

        /// <summary>Which reader, with its version.</summary>
        public string? Reader { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<ProposalMade>("proposal.made", Gathered.Proposals);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "A proposal";

        /// <summary>The entry offered.</summary>
        public Checked<EntryBody> Offered() => BodyJson.Read(Entry, Body);

        /// <inheritdoc/>
        public override string Told(Called called) => Offered().Match(offered => $"Proposed: {offered.Told(called)}", _ => "Proposed");

        internal override EntryBody Named(Func<EntryName, EntryName> map)
        {
            var offered = Offered().OrThrow();
            var mapped = offered.Mapped(map);
            return this with
            {
                Body = mapped.Names().SequenceEqual(offered.Names()) ? Body : JsonElement.Parse(BodyJson.Write(mapped)),
                From = [.. From.Select(source => source with { Entry = map(source.Entry) })],
            };
        }

        internal override void Check(BodyCheck check)
        {
            check.Must(EntryKinds.ByType.TryGetValue(Entry, out var kind)
                && kind.CanBeProposed, "entry", Journal.Said.Verbatim(BodyJson.Short(Entry)), "journal.wanted.type-entry-reader-may-offer");
            if (check.Refusals.Count > 0) return;
            check.Refusals.AddRange(Offered().Match<IEnumerable<Refusal>>(offered => offered.Origin is null
                ? [] : [new Refusal("origin", "journal.given.proposal", "journal.wanted.nothing-entry-takes")], refused => refused));
            check.Must(Confidence is >= 0 and <= 1, "confidence", Journal.Said.Verbatim($"{Confidence:0.###}"), "journal.wanted.0-1");
            check.Must(From.Count is >= 1 and <= Most, "from", new Said("journal.given.count-sources", ("count", From.Count)),
                new Said("journal.wanted.1-most", ("most", Most)));
            check.AtMost("reader", Reader, 80);
            foreach (var source in From.Take(Most)) source.Check(check);
        }
    }

    /// <summary>The inspector does not take a proposal.</summary>
    public sealed record ProposalDropped : EntryBody
    {
        /// <summary>Which.</summary>
        public required EntryName Proposal { get; init; }

        /// <summary>Why, when it was said.</summary>
        public string? Reason { get; init; }

        internal static EntryKind ItsKind { get; } = EntryKind.ByHand<ProposalDropped>("proposal.dropped", Gathered.Proposals);

        internal override EntryKind OfKind => ItsKind;

        internal override string Said => "The dropping of a proposal";

        internal override EntryName? Owner => Proposal;

        /// <inheritdoc/>
        public override string Told(Called called) => $"Proposal dropped{(Reason is null ? "" : $", because {Reason}")}";

        internal override EntryBody Named(Func<EntryName, EntryName> map) => this with { Proposal = map(Proposal) };

        internal override void Check(BodyCheck check) => check.AtMost("reason", Reason, Limits.SentenceCharacters);
    }
}

/// <summary>What a proposal was read from.</summary>
/// <param name="Entry">The photograph, sound, note or other entry.</param>
/// <param name="Box">Where on the picture.</param>
/// <param name="Start">First character of the words it was read from, counted from 0.</param>
/// <param name="Length">How many characters.</param>
/// <param name="Line">Line of a sheet, counted from 1.</param>
public sealed record ReadFrom(EntryName Entry, PictureBox? Box = null, int? Start = null, int? Length = null, int? Line = null)
{
    internal void Check(BodyCheck check)
    {
        if (Box is { } box)
        {
            var within = box is { X: >= 0, Y: >= 0, Width: > 0, Height: > 0 } && box.X + box.Width <= 1.000001 && box.Y
                + box.Height <= 1.000001;
            check.Must(within, "box", Journal.Said.Verbatim($"{box.X:0.###}, {box.Y:0.###}, {box.Width:0.###} x {box.Height:0.###}"),
                "journal.wanted.within-picture-0-1");
        }
        check.Must(Start is null == Length is null && Start is null or >= 0 && Length is null
            or > 0, "span", new Said("journal.given.start-for-length", ("start", $"{Start}"), ("length", $"{Length}")),
            "journal.wanted.first-character-from-0-length");
        check.Must(Line is null or >= 1, "line", Journal.Said.Verbatim($"{Line}"), "journal.wanted.from-1");
    }
}

/// <summary>A box on a picture, in parts of its width and height from the upper left corner.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public sealed record PictureBox(double X, double Y, double Width, double Height);
