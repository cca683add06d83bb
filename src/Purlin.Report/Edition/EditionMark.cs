namespace Purlin.Report.Edition;

/// <summary>What an issue of the report is: a working copy, or a sealed edition with its number, date and the root of the record it was made from.</summary>
public abstract record EditionMark
{
    private EditionMark() { }

    /// <summary>The date a reader sees.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Not issued: says so on every page.</summary>
    public sealed record WorkingCopy : EditionMark;

    /// <summary>A sealed edition.</summary>
    /// <param name="Number">1, 2, 3, ...</param>
    /// <param name="Root">Root of the record: <see cref="Purlin.Journal.Merge.Merkle.Root"/> of the lines it was made from.</param>
    public sealed record Sealed(int Number, string Root) : EditionMark
    {
        /// <summary>Fingerprint of the key the office signs its receipts with; none where no office sealed it. Who has the paper can hold any archive against it.</summary>
        public string? OfficeKey { get; init; }

        /// <summary>Fingerprint of the own key of the phone that sealed it where no office did.</summary>
        public string? PhoneKey { get; init; }

        /// <summary>Seal of the edition before; none for the first.</summary>
        public string? Previous { get; init; }
    }
}
