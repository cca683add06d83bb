using Purlin.Cli;

return await PurlinCommand.RunAsync(args, Terminal.OfThisProcess());
