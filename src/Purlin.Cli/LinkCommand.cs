using System.CommandLine;
using Purlin.Office;
using Purlin.Office.Owner;
using Purlin.Office.Storage;

namespace Purlin.Cli;

/// <summary><c>purlin link</c>: a link to sign in with, for an office that runs as a service and shows none itself.</summary>
internal static class LinkCommand
{
    public static Command Build(Terminal terminal, TimeProvider clock)
    {
        Option<DirectoryInfo> data = new("--data")
        {
            Description = "The office's folder",
            DefaultValueFactory = _ => new DirectoryInfo("office")
        };
        Command command = new("link",
            "Print a link that signs one device in within half an hour, as address and as a code for a phone's camera") { data };
        command.SetAction(async (parsed, cancel) =>
        {
            var folder = parsed.GetRequiredValue(data).FullName;
            using var file = OfficeFolder.Peek(folder);
            OfficeSettings settings = new(file);
            if (await settings.Get(Tenant.Own, OfficeSettings.Address, cancel) is not { } address)
                throw new OfficeRefused($"The office in {folder} has not been started yet; start it first.");
            LinkPrint.Print(terminal, address, await OwnerAccount.KeepLinkCode(settings, clock.GetUtcNow()));
            return ExitStatus.Done;
        });
        return command;
    }
}
