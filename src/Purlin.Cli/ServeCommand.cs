using System.CommandLine;
using System.Diagnostics;
using System.Net.Sockets;
using Purlin.Demo;
using Purlin.Journal;
using Purlin.Journal.Archive;
using Purlin.Office;
using Purlin.Office.Certificates;
using Purlin.Office.Door;
using Purlin.Office.Owner;
using Purlin.Office.Storage;

namespace Purlin.Cli;

/// <summary><c>purlin serve</c>: the office, with the app.</summary>
internal static class ServeCommand
{
    public static Command Build(Terminal terminal)
    {
        var data = Usual("--data", "Folder of database, photographs and keys; made when absent", new DirectoryInfo("office"));
        var address = Usual("--address", "Where to listen; loopback unless you decide otherwise", "http://127.0.0.1:5225");
        Option<string?> open = new("--public") { Description = "The address people open, https://NAME, when a proxy on this machine ends the encryption" };
        Option<bool> own = new("--own-certificate") { Description = "Get and renew the certificate for the name of --public by itself, on ports 80 and 443. Agrees to the terms of the certificate authority" };
        var authority = Usual("--acme-directory", "The directory of another certificate authority (RFC 8555)", CertificateOptions.PublicDirectory);
        Option<string[]> hosts = new("--host") { Description = "A host name to answer to besides those of loopback and --public" };
        Option<bool> demo = new("--demo") { Description = "Take in the demo inspection, an invented house" };
        Option<bool> browser = new("--open") { Description = "Open a browser where there is a desktop" };
        Option<bool> code = new("--new-owner-code") { Description = "Make a new owner's code, shown once; the old one and all sessions end" };
        Command command = new("serve",
            "Run the office: the app, sync, storage, reports") { data, address, open, own, authority, hosts, demo, browser, code };
        command.SetAction(async (parsed, cancel) =>
        {
            var checkedAddress = Listening(parsed.GetRequiredValue(address));
            var checkedPublic = Public(parsed.GetValue(open));
            if (!checkedAddress.IsAccepted) return terminal.Refuse(checkedAddress.Refusals);
            if (!checkedPublic.IsAccepted) return terminal.Refuse(checkedPublic.Refusals);
            if (parsed.GetValue(own) && checkedPublic.OrThrow() is null)
                return terminal.Refuse([new Refusal("--own-certificate", "no --public", "the name it is for: --public https://NAME")]);
            OfficeOptions options = new()
            {
                Folder = parsed.GetRequiredValue(data).FullName,
                Address = parsed.GetRequiredValue(address),
                Public = checkedPublic.OrThrow(),
                Certificate = parsed.GetValue(own)
                    ? new CertificateOptions { Name = checkedPublic.OrThrow()!.Host, Directory = parsed.GetRequiredValue(authority) }
                    : null,
                Hosts = parsed.GetValue(hosts) ?? [],
                NewOwnerCode = parsed.GetValue(code),
                Import = parsed.GetValue(demo) ? [DemoArchive] : [],
                // As a service, what is printed stands in a log for as long as that is kept.
                ShowCodes = Environment.GetEnvironmentVariable("INVOCATION_ID") is null,
                Say = terminal.Out.WriteLine,
            };
            return await RunAsync(terminal, options, parsed.GetValue(browser), cancel);
        });
        return command;
    }

    /// <summary>An option with what is usual when it is left out.</summary>
    private static Option<T> Usual<T>(string name, string description, T usual) =>
        new(name) { Description = description, DefaultValueFactory = _ => usual };

    private static async Task<int> RunAsync(Terminal terminal, OfficeOptions options, bool browser, CancellationToken cancel)
    {
        await using var office = OfficeHost.Build(options);
        try
        {
            await office.StartAsync(cancel);
        }
        catch (Exception failure) when (failure is IOException or SocketException)
        {
            terminal.Refuse($"could not listen on {options.Address}: {failure.Message.TrimEnd('.')}. Is Purlin running already? Otherwise give another --address.");
            return ExitStatus.BadInput;
        }
        var listens = office.Urls.FirstOrDefault() ?? options.Address;
        var shown = options.Public?.GetLeftPart(UriPartial.Authority) ?? listens;
        var settings = office.Services.GetRequiredService<OfficeSettings>();
        await settings.Keep(Tenant.Own, OfficeSettings.Address, shown);
        terminal.Out.WriteLine($"Purlin is at {listens}   (Ctrl+C stops it; data in {options.Folder})");
        Say(terminal, options, listens);
        if (await Scrub.Last(settings, Tenant.Own, cancel) is { } looked)
            terminal.Out.WriteLine($"Files were last looked at on {looked.At}; all of them were last found good on {looked.Good ?? "no day yet"}.");
        if (options.ShowCodes)
        {
            var link = office.Services.GetRequiredService<OwnerAccount>().NewLinkCode();
            LinkPrint.Print(terminal, shown, link);
            if (browser) OpenBrowser(SignInLink.Address(listens, link));
        }
        else terminal.Out.WriteLine($"To sign in, ask for a link: purlin link --data {options.Folder}");
        await office.WaitForShutdownAsync(cancel);
        return ExitStatus.Done;
    }

    private static void Say(Terminal terminal, OfficeOptions options, string listens)
    {
        if (options.Public is { } open) terminal.Out.WriteLine($"People open {open.GetLeftPart(UriPartial.Authority)}");
        else if (Uri.TryCreate(listens, UriKind.Absolute, out var at) && at.Scheme == "http" && !PlainAddress.IsThisMachine(at.Host)
            && at.Host != "unix")
            terminal.Out.WriteLine("This address is not encrypted: phones keep nothing there and are shown a sentence that says so. See docs/office.md for an https address.");
    }

    /// <summary>An address to listen on, refused here in a sentence where the web server would end in a trace.</summary>
    private static Checked<Uri> Listening(string given)
    {
        if (!Uri.TryCreate(given, UriKind.Absolute, out var address) || address.Scheme is not ("http" or "https"))
            return new Refusal("--address", given, "an address such as http://127.0.0.1:5225");
        if (address.Host != "unix" && address.PathAndQuery != "/")
            return new Refusal("--address", given,
                "scheme, host and port only; the office has no other place than the root of its address");
        var certificate = Environment.GetEnvironmentVariables().Keys.Cast<string>()
            .Any(name => name.StartsWith("ASPNETCORE_Kestrel__", StringComparison.OrdinalIgnoreCase)
            || name.StartsWith("Kestrel__", StringComparison.OrdinalIgnoreCase));
        if (address.Scheme == "https" && !certificate)
            return new Refusal("--address", given,
                "http behind a proxy (--public https://NAME), or https with a certificate of yours in Kestrel__Certificates__Default__Path and KeyPath: docs/office.md");
        return address;
    }

    private static Checked<Uri?> Public(string? given)
    {
        if (given is null) return (Uri?)null;
        return Uri.TryCreate(given, UriKind.Absolute, out var address) && address.Scheme == "https" && address.PathAndQuery == "/"
            ? address
            : new Refusal("--public", given, "an address such as https://office.example.org, without a path");
    }

    private static MemoryStream DemoArchive()
    {
        var demo = DemoInspection.Write();
        MemoryStream archive = new();
        ArchiveWriter.Write(archive, demo.Entries, demo.Pictures.Values.Select(bytes => ArchivePhoto.Of(bytes, "image/jpeg")));
        archive.Position = 0;
        return archive;
    }

    /// <summary>
    /// A desktop has a display or is one of the systems that always have; a browser that does not start is nobody's error.
    /// </summary>
    private static void OpenBrowser(string address)
    {
        var desktop = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS()
            || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("DISPLAY"))
            || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WAYLAND_DISPLAY"));
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
