namespace Purlin.Cli;

/// <summary>What the shell is told.</summary>
public static class ExitStatus
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and the command found something it was asked to look for: a damaged archive, a failed check.</summary>
    public const int Found = 1;

    /// <summary>The input was refused; standard error says what, where and what is allowed.</summary>
    public const int BadInput = 2;
}
