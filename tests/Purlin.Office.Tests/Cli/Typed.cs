using System.CommandLine;
using Purlin.Cli;

namespace Purlin.Office.Tests.Cli;

/// <summary>What a person types at the shell and what comes back.</summary>
internal static class Typed
{
    public static async Task<(int Status, string Out, string Error)> RunAsync(string[] arguments, string input = "", TimeProvider? clock = null)
    {
        using var reader = new StringReader(input);
        await using var output = new StringWriter();
        await using var error = new StringWriter();
        var terminal = new Terminal(reader, output, error, colour: false, progress: false);
        var status = await PurlinCommand.RunAsync(arguments, terminal, clock);
        return (status, output.ToString(), error.ToString());
    }
}
