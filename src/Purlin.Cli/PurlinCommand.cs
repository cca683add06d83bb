using System.CommandLine;

namespace Purlin.Cli;

/// <summary>The command <c>purlin</c>: one file a command.</summary>
public static class PurlinCommand
{
    /// <summary>Runs what was typed. The one catch and the one place where the exit status is decided.</summary>
    public static async Task<int> RunAsync(string[] arguments, Terminal terminal, TimeProvider? clock = null)
    {
        ArgumentNullException.ThrowIfNull(terminal);
        try
        {
            var parsed = Build(terminal, clock ?? TimeProvider.System).Parse(arguments);
            if (parsed.Errors.Count > 0)
            {
                foreach (var error in parsed.Errors) terminal.Refuse(error.Message);
                terminal.Refuse("see purlin --help");
                return ExitStatus.BadInput;
            }
            return await parsed.InvokeAsync(new InvocationConfiguration
            {
                Output = terminal.Out,
                Error = terminal.Error,
                EnableDefaultExceptionHandler = false
            });
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or Office.OfficeRefused)
        {
            terminal.Refuse(failure.Message);
            return ExitStatus.BadInput;
        }
        catch (OperationCanceledException)
        {
            terminal.Refuse("stopped; nothing half-written was left behind");
            return ExitStatus.BadInput;
        }
    }

    private static RootCommand Build(Terminal terminal, TimeProvider clock)
    {
        RootCommand root = new("Purlin: record the evidence once, on site; the program reckons, follows up, judges and writes; the inspector decides.");
        root.Add(ServeCommand.Build(terminal));
        root.Add(SetupCommand.Build(terminal));
        root.Add(LinkCommand.Build(terminal, clock));
        root.Add(CopyCommands.Backup(terminal));
        root.Add(CopyCommands.Restore(terminal));
        root.Add(CopyCommands.Verifying(terminal));
        root.Add(DemoCommand.Build(terminal));
        root.Add(JudgeCommand.Build(terminal, clock));
        root.Add(LookCommand.Build(terminal, clock));
        root.Add(ListenCommand.Build(terminal));
        root.Add(CheckCommand.Build(terminal));
        root.Add(ReportCommand.Build(terminal, clock));
        root.Add(AgainCommand.Build(terminal, clock));
        root.Add(ReckonCommand.Build(terminal));
        root.Add(WordingCommand.Build(terminal));
        root.Add(BookCommand.Build(terminal, TimeProvider.System));
        return root;
    }
}
