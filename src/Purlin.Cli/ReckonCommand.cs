using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Cli;

/// <summary><c>purlin reckon NAME</c>: one JSON object in, one out.</summary>
internal static class ReckonCommand
{
    private const int MostInput = 16 * 1024 * 1024;

    internal static readonly JsonSerializerOptions Printed = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping
    };

    public static Command Build(Terminal terminal)
    {
        Argument<string?> name = new("NAME") { Description = "Which reckoning; --list prints them all", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> list = new("--list") { Description = "Print every name with a line on what it is for" };
        Command command = new("reckon", "Reckon: reads one JSON object from standard input and prints one JSON object") { name, list };
        command.Add(new HelpOption { Action = new ReckoningHelp(terminal, name) });
        command.SetAction(async (parsed, cancel) => parsed.GetValue(list)
            ? List(terminal) : await ReckonAsync(terminal, parsed.GetValue(name), cancel));
        return command;
    }

    private static int List(Terminal terminal)
    {
        var width = Reckonings.All.Max(calculation => calculation.Name.Length);
        foreach (var calculation in Reckonings.All)
            terminal.Out.WriteLine($"{calculation.Name.PadRight(width)}  {Terminal.Words.Say(calculation.Purpose)}");
        return ExitStatus.Done;
    }

    private static async Task<int> ReckonAsync(Terminal terminal, string? name, CancellationToken cancel)
    {
        if (name is null)
        {
            terminal.Refuse("reckon: no name given; purlin reckon --list prints them all");
            return ExitStatus.BadInput;
        }
        var found = Reckonings.Find(name);
        if (!found.IsAccepted) return terminal.Refuse(found.Refusals);
        return (await ReadAsync(terminal, cancel)).Match(
            input => Reckonings.Reckon(name, input).Match(
                working =>
                {
                    terminal.Out.WriteLine(working.ToJson(Terminal.Words).ToJsonString(Printed));
                    return ExitStatus.Done;
                },
                terminal.Refuse),
            terminal.Refuse);
    }

    private static async Task<Checked<JsonObject>> ReadAsync(Terminal terminal, CancellationToken cancel)
    {
        var buffer = new char[MostInput + 1];
        var length = await terminal.In.ReadBlockAsync(buffer, cancel);
        if (length > MostInput) return new Refusal("standard input", $"more than {MostInput} characters", "one JSON object");
        return Reckonings.ReadInput(new string(buffer, 0, length))
            .Match(input => input, refusals => Checked<JsonObject>.Refused([.. refusals.Select(refusal => refusal with { Input = "standard input" })]));
    }

    /// <summary>Help of one reckoning comes from its own block: inputs with unit, range and whether required, and its sources.</summary>
    private sealed class ReckoningHelp(Terminal terminal, Argument<string?> name) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            if (parseResult.GetValue(name) is not { } wanted) return new HelpAction().Invoke(parseResult);
            return Reckonings.Find(wanted).Match(Print, terminal.Refuse);
        }

        private int Print(Calculation calculation)
        {
            terminal.Out.WriteLine($"{terminal.Bold(calculation.Name)}: {Terminal.Words.Say(calculation.Purpose)}");
            terminal.Out.WriteLine();
            Print(calculation.Inputs, "  ");
            terminal.Out.WriteLine();
            foreach (var source in calculation.Sources) terminal.Out.WriteLine($"  source: {source}");
            return ExitStatus.Done;
        }

        private void Print(IEnumerable<Input> inputs, string indent)
        {
            foreach (var input in inputs)
            {
                terminal.Out.WriteLine($"{indent}{(input.Name.Length == 0 ? "each" : input.Name)}{(input.Required ? " (required)" : "")}: {Terminal.Words.Say(input.Meaning)}; {Terminal.Words.Say(input.Allowed)}");
                if (input is Input.List list) Print(list.Of, indent + "    ");
                if (input is Input.Group group) Print(group.Of, indent + "    ");
            }
        }
    }
}
