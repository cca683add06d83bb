using System.CommandLine;
using System.Diagnostics;
using Purlin.Demo;
using Purlin.Journal.Archive;
using Purlin.Office;
using Purlin.Office.Owner;

namespace Purlin.Cli;

/// <summary><c>purlin serve</c>: the office, with the app.</summary>
internal static class ServeCommand
{
    public static Command Build(Terminal terminal)
    {
        Option<DirectoryInfo> data = new("--data") { Description = "Folder of database, photographs and keys; made when absent", DefaultValueFactory = _ => new DirectoryInfo("office") };
        Option<string> address = new("--address") { Description = "Where to listen; loopback unless you decide otherwise", DefaultValueFactory = _ => "http://127.0.0.1:5225" };
        Option<string[]> hosts = new("--host") { Description = "A host name to answer to besides those of loopback" };
        Option<bool> demo = new("--demo") { Description = "Take in the demo inspection, an invented house" };
        Option<bool> open = new("--open") { Description = "Open a browser where there is a desktop" };
        Option<bool> code = new("--new-owner-code") { Description = "Make a new owner's code, shown once; the old one and all sessions end" };
        Command command = new("serve", "Run the office: the app, sync, storage, reports") { data, address, hosts, demo, open, code };
        command.SetAction(async (parsed, cancel) =>
        {
            OfficeOptions options = new()
            {
                Folder = parsed.GetRequiredValue(data).FullName,
                Address = parsed.GetRequiredValue(address),
                Hosts = parsed.GetValue(hosts) ?? [],
                NewOwnerCode = parsed.GetValue(code),
                Import = parsed.GetValue(demo) ? [DemoArchive] : [],
                Say = terminal.Out.WriteLine,
            };
            return await RunAsync(terminal, options, parsed.GetValue(open), cancel);
        });
        return command;
    }

    private static async Task<int> RunAsync(Terminal terminal, OfficeOptions options, bool open, CancellationToken cancel)
    {
        if (!Uri.TryCreate(options.Address, UriKind.Absolute, out var address) || address.Scheme is not ("http" or "https"))
        {
            terminal.Refuse($"--address: {options.Address}; an address such as http://127.0.0.1:5225");
            return ExitStatus.BadInput;
        }
        await using var office = OfficeHost.Build(options);
        try
        {
            await office.StartAsync(cancel);
        }
        catch (IOException busy)
        {
            terminal.Refuse($"could not listen on {options.Address}: {busy.Message} Is Purlin running already? Otherwise give another --address.");
            return ExitStatus.BadInput;
        }
        var shown = office.Urls.FirstOrDefault() ?? options.Address;
        terminal.Out.WriteLine($"Purlin is at {shown}   (Ctrl+C stops it; data in {options.Folder})");
        var enter = $"{shown}/office/enter#{office.Services.GetRequiredService<OwnerAccount>().NewLinkCode()}";
        terminal.Out.WriteLine($"To sign in, open this once within half an hour: {enter}");
        if (open) OpenBrowser(enter);
        await office.WaitForShutdownAsync(cancel);
        return ExitStatus.Done;
    }

    private static MemoryStream DemoArchive()
    {
        var demo = DemoInspection.Write();
        MemoryStream archive = new();
        ArchiveWriter.Write(archive, demo.Entries, demo.Pictures.Values.Select(bytes => ArchivePhoto.Of(bytes, "image/jpeg")));
        archive.Position = 0;
        return archive;
    }

    /// <summary>A desktop has a display or is one of the systems that always have; a browser that does not start is nobody's error.</summary>
    private static void OpenBrowser(string address)
    {
        var desktop = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("DISPLAY")) || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WAYLAND_DISPLAY"));
        if (!desktop) return;
        try
        {
            using var started = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            // No browser is registered: the printed address is enough.
        }
    }
}
