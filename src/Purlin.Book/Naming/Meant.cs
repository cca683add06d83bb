namespace Purlin.Book.Naming;

/// <summary>How a name of the book was found.</summary>
public enum Found
{
    /// <summary>It was written as the book has it.</summary>
    AsWritten,

    /// <summary>Plainly the same: another case, a synonym.</summary>
    Same,

    /// <summary>A slip of a letter or two, and nothing else is near. It is taken, and a person is told.</summary>
    Slip,

    /// <summary>Nothing is plainly meant.</summary>
    Unknown,
}

/// <summary>What a name that somebody wrote means to the book.</summary>
/// <param name="Name">The name as the book has it; as it was written where it is not understood.</param>
/// <param name="Found">How it was found.</param>
/// <param name="Nearest">What is nearest to a name that is not understood.</param>
public readonly record struct Meant(string Name, Found Found, IReadOnlyList<string> Nearest)
{
    /// <summary>All that is allowed, where nothing is near and the list is short.</summary>
    public IReadOnlyList<string> Allowed { get => field ?? []; init; }

    /// <summary>It is as the book has it.</summary>
    public static Meant AsWritten(string name) => new(name, Found.AsWritten, []);

    /// <summary>Whether the book knows it.</summary>
    public bool IsUnderstood => Found != Found.Unknown;
}
