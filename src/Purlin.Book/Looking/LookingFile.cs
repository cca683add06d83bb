namespace Purlin.Book.Looking;

/// <summary>A file that says what to look at first.</summary>
internal sealed record LookingFile : BookFileForm
{
    public IReadOnlyList<Usual> Usual { get => field ?? []; init; }

    public IReadOnlyList<Often> Often { get => field ?? []; init; }

    public IReadOnlyList<Fit> Fits { get => field ?? []; init; }
}
