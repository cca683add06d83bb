namespace Purlin.Office;

/// <summary>The office cannot start, or a file of it cannot be used, as things are: one sentence for the person at the machine, and nothing was changed.</summary>
public sealed class OfficeRefused : Exception
{
    public OfficeRefused(string words)
        : base(words)
    {
    }

    public OfficeRefused(string words, Exception cause)
        : base(words, cause)
    {
    }
}
