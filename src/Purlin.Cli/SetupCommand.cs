using System.CommandLine;
using System.Diagnostics;
using System.Text.RegularExpressions;
using Purlin.Journal;

namespace Purlin.Cli;

/// <summary>
/// <c>purlin setup NAME</c>: makes a machine an office: the service's options, the service itself, and a link to sign in with.
/// </summary>
internal static class SetupCommand
{
    private const string Data = "/var/lib/purlin";
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    public static Command Build(Terminal terminal)
    {
        Argument<string> name = new("NAME") { Description = "The name that points to this machine, such as office.example.org" };
        Option<bool> proxy = new("--behind-proxy") { Description = "A proxy on this machine ends the encryption; otherwise the office gets its certificate itself and uses ports 80 and 443" };
        Option<DirectoryInfo> root = new("--root")
        {
            Description = "Write below this folder and start nothing",
            DefaultValueFactory = _ => new DirectoryInfo("/")
        };
        Command command = new("setup",
            "Run the office as a service under a name of its own, with a certificate. Agrees to the terms of the certificate authority") { name, proxy, root };
        command.SetAction(async (parsed, cancel) =>
        {
            var at = parsed.GetRequiredValue(root).FullName;
            var given = parsed.GetRequiredValue(name);
            if (!IsName(given)) return terminal.Refuse([new Refusal("NAME", given,
                "a name such as office.example.org, without https:// and without a path")]);
            Write(at, given, parsed.GetValue(proxy));
            if (at != "/" || !Directory.Exists("/run/systemd/system"))
            {
                terminal.Out.WriteLine($"{Path.Combine(at, "etc/default/purlin")} is written. Nothing was started: this is no machine that systemd runs.");
                return ExitStatus.Done;
            }
            return await Start(terminal, given, cancel);
        });
        return command;
    }

    /// <summary>A host name of at least two parts: RFC 1123, section 2.1.</summary>
    private static bool IsName(string name) =>
        name.Length <= 253 && Regex.IsMatch(name, "^([a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?\\.)+[a-z]([a-z0-9-]{0,61}[a-z0-9])?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));

    private static void Write(string root, string name, bool behindProxy)
    {
        var defaults = Path.Combine(root, "etc/default");
        Directory.CreateDirectory(defaults);
        var options = behindProxy ? $"--public https://{name}" : $"--public https://{name} --own-certificate";
        File.WriteAllText(Path.Combine(defaults, "purlin"),
            $"# Written by purlin setup; what purlin serve is given. After a change: systemctl restart purlin\nPURLIN_OPTIONS=\"{options}\"\n");
        // The package brings its own; an unpacked archive has none.
        if (File.Exists(Path.Combine(root, "lib/systemd/system/purlin.service"))) return;
        var units = Path.Combine(root, "etc/systemd/system");
        Directory.CreateDirectory(units);
        using var unit = typeof(SetupCommand).Assembly.GetManifestResourceStream("purlin.service")!;
        using var reader = new StreamReader(unit);
        var program = Environment.ProcessPath is { } path && Path.GetFileName(path) == "purlin" ? path : "/usr/bin/purlin";
        File.WriteAllText(Path.Combine(units, "purlin.service"), reader.ReadToEnd()
            .Replace("ExecStart=/usr/bin/purlin", $"ExecStart={program}", StringComparison.Ordinal));
    }

    private static async Task<int> Start(Terminal terminal, string name, CancellationToken cancel)
    {
        if (!await Run("daemon-reload", cancel) || !await Run("enable", cancel, "purlin") || !await Run("restart", cancel, "purlin"))
        {
            terminal.Refuse("the service could not be started: systemctl status purlin says why. Is this command run as root?");
            return ExitStatus.BadInput;
        }
        terminal.Out.WriteLine($"The service runs. Waiting for https://{name} ...");
        if (!await Answers(name, cancel))
        {
            terminal.Refuse($"https://{name} does not answer yet. Does the name point to this machine, and are ports 80 and 443 open? journalctl -u purlin says what was tried; purlin link --data {Data} gives the link when it answers.");
            return ExitStatus.Found;
        }
        return await PurlinCommand.RunAsync(["link", "--data", Data], terminal);
    }

    private static async Task<bool> Run(string verb, CancellationToken cancel, params string[] units)
    {
        using var process = Process.Start(new ProcessStartInfo("systemctl", [verb, .. units]) { UseShellExecute = false });
        if (process is null) return false;
        await process.WaitForExitAsync(cancel);
        return process.ExitCode == 0;
    }

    private static async Task<bool> Answers(string name, CancellationToken cancel)
    {
        using HttpClient client = new() { Timeout = TimeSpan.FromSeconds(10) };
        for (var waited = Stopwatch.StartNew(); waited.Elapsed < Patience; await Task.Delay(TimeSpan.FromSeconds(2), cancel))
        {
            try
            {
                if ((await client.GetAsync(new Uri($"https://{name}/office/session"), cancel)).IsSuccessStatusCode) return true;
            }
            catch (Exception notYet) when (notYet is HttpRequestException or TaskCanceledException && !cancel.IsCancellationRequested)
            {
                // The certificate is still on its way.
            }
        }
        return false;
    }
}
