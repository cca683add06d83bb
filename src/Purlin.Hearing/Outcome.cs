namespace Purlin.Hearing;

/// <summary>How a look turned out, as it was said.</summary>
public enum Outcome
{
    /// <summary>It is there.</summary>
    Seen,

    /// <summary>Looked for, and not there.</summary>
    Clear,

    /// <summary>Could not be looked at, or was not tried.</summary>
    NotVisible,
}
