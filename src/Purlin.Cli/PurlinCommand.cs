using System.CommandLine;

namespace Purlin.Cli;

/// <summary>The command <c>purlin</c>: one file a command.</summary>
public static class PurlinCommand
{
    /// <summary>All commands over one terminal.</summary>
    public static RootCommand Build(Terminal terminal)
    {
        RootCommand root = new("Purlin: record the evidence once, on site; the program reckons, follows up, judges and writes; the inspector decides.");
        root.Add(ReckonCommand.Build(terminal));
        return root;
    }
}
