using System.CommandLine;
using Purlin.Cli;

// The one catch and the one place where the exit status is decided: 0 done, 1 the command found something, 2 bad input.
var terminal = Terminal.OfThisProcess();
try
{
    var parsed = PurlinCommand.Build(terminal).Parse(args);
    if (parsed.Errors.Count > 0)
    {
        foreach (var error in parsed.Errors) terminal.Refuse(error.Message);
        terminal.Refuse("Try: purlin --help");
        return ExitStatus.BadInput;
    }
    return await parsed.InvokeAsync(new InvocationConfiguration { Output = terminal.Out, Error = terminal.Error, EnableDefaultExceptionHandler = false });
}
catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
{
    terminal.Refuse(failure.Message);
    return ExitStatus.BadInput;
}
catch (OperationCanceledException)
{
    terminal.Refuse("Stopped. Nothing half-written was left behind.");
    return ExitStatus.BadInput;
}
