using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>Every screen, in three lights: nothing that keeps a person out, nothing too small for a thumb.</summary>
public sealed class Access(Browser browser) : IAsyncLifetime
{
    private TinyHost host = null!;
    private Phone phone = null!;
    private Seed seed = null!;

    public async ValueTask InitializeAsync()
    {
        host = await TinyHost.StartAsync();
        phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        seed = await phone.SeedAsync("[\"washington\"]");
        await phone.Page.EvaluateAsync("""
            async ([insp, kitchen]) => {
              const { write } = await import('/device/writing.js');
              await write(insp, [
                { type: 'observation.made', body: { place: kitchen, words: 'stain below the sink', outcome: 'seen' } },
                { type: 'limitation.recorded', body: { what: 'North wall not seen', place: kitchen } },
                { type: 'note.written', body: { about: kitchen, part: 'n1', text: 'owner says it is new' } },
              ]);
            }
            """, new[] { seed.Insp, seed.Kitchen });
    }

    // What stands on a screen once it is drawn; a screen that is not named here has at least its title.
    private static readonly Dictionary<string, string> Drawn = new(StringComparer.Ordinal)
    {
        ["/"] = ".visit",
        ["/new"] = "text=Draw the house",
        ["/visit/{Inspection}"] = ".places a",
        ["/visit/{Inspection}/place/{Name}"] = ".place-drawing",
        ["/visit/{Inspection}/walk"] = ".part",
        ["/visit/{Inspection}/issue"] = ".part",
        ["/visit/{Inspection}/acts"] = ".acts li",
        ["/settings"] = ".choice",
        ["/wording"] = ".bring",
        ["/wording/condition"] = ".choice",
        ["/visit/{Inspection}/wording/{Address}"] = ".sentence",
        ["/sign-in"] = "form",
        ["/capture.html"] = "#capture .shutter",
    };

    /// <summary>Every screen that says <c>@page</c>, and the camera alone: a new one is checked from its first day.</summary>
    private IReadOnlyList<(string Name, string Url, string Wait)> Screens =>
    [
        .. Directory.EnumerateFiles(Path.Combine(PublishedApp.Repository, "src", "Purlin.Field"), "*.razor", SearchOption.AllDirectories)
            .SelectMany(File.ReadLines).Where(line => line.StartsWith("@page \"", StringComparison.Ordinal)).Select(line => line.Split('"')[1]).Append("/capture.html").Order(StringComparer.Ordinal)
            .Select(template => (template, Filled(template), Drawn.GetValueOrDefault(template, "h1"))),
    ];

    private string Filled(string template)
    {
        var url = template.Replace("{Inspection}", seed.Insp, StringComparison.Ordinal).Replace("{Name}", seed.Kitchen.Replace('.', '-'), StringComparison.Ordinal)
            .Replace("{Address}", "water-heater,relief-pipe-missing", StringComparison.Ordinal).Replace("{Number:int}", "1", StringComparison.Ordinal);
        Assert.DoesNotContain("{", url, StringComparison.Ordinal);
        return url;
    }

    [Fact]
    public void Every_screen_is_among_those_that_are_checked()
    {
        Assert.True(Screens.Count >= 17);
        Assert.Empty(Drawn.Keys.Except(Screens.Select(screen => screen.Name)));
    }

    /// <summary>
    /// Each screen is opened once, as a person comes to it, and looked at in every light and with gloves: to start the program anew for each
    /// light would take ten times as long and show nothing more.
    /// </summary>
    [Fact]
    public async Task No_screen_has_a_serious_fault_in_any_light_or_a_target_too_small_for_a_thumb()
    {
        List<string> faults = [];
        foreach (var (name, url, wait) in Screens)
        {
            await OpenAsync(url, wait);
            faults.AddRange(await phone.Page.FaultsAsync(name));
        }

        Assert.Empty(faults);
    }

    private async Task OpenAsync(string url, string wait)
    {
        if (url.EndsWith(".html", StringComparison.Ordinal)) await phone.OpenAsync(url);
        else await phone.GoAsync(url);
        await phone.Page.Locator(wait).First.WaitForAsync();
    }

    [Fact]
    public async Task What_is_frequent_lies_in_the_lower_part_under_the_thumb()
    {
        foreach (var (width, height) in ((int, int)[])[(360, 640), (390, 844), (768, 1024)])
        {
            await phone.Page.SetViewportSizeAsync(width, height);
            await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
            await phone.Page.Locator(".thing").First.WaitForAsync();
            foreach (var button in await phone.Page.Locator(".thumb button, .sayline input").AllAsync())
            {
                var box = (await button.BoundingBoxAsync())!;
                Assert.True(box.Y >= height * 0.4 && box.Y + box.Height <= height + 1, $"{width} x {height}: {box.Y} to {box.Y + box.Height}");
            }
        }
    }

    [Fact]
    public async Task Nothing_moves_for_a_person_who_asked_for_stillness()
    {
        await phone.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await phone.Page.Locator(".thumb .act").First.TapAsync();
        await phone.Page.Locator(".slip").WaitForAsync();
        Assert.Equal(0, await phone.Page.EvaluateAsync<int>("() => document.getAnimations().length"));
    }

    public async ValueTask DisposeAsync()
    {
        await phone.DisposeAsync();
        await host.DisposeAsync();
    }
}
