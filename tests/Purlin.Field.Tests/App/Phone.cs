using System.Text.Json;

namespace Purlin.Field.Tests.App;

/// <summary>A phone with the app on it: a browser context, and what a person or the device module does there.</summary>
public sealed class Phone(IBrowserContext context, string address) : IAsyncDisposable
{
    // Generous, since waiting costs nothing where all goes well, and a busy machine is slow.
    private const int Patience = 120_000;

    public IBrowserContext Context => context;

    public string Address { get; set; } = address;

    public IPage Page { get; private set; } = null!;

    public List<string> PageErrors { get; } = [];

    /// <summary>Opens a page of the app; a new tab each time the last one is gone.</summary>
    public async Task<IPage> OpenAsync(string path)
    {
        if (Page is null || Page.IsClosed) await NewTabAsync();
        await Page!.GotoAsync(Address + path, new() { Timeout = 2 * Patience });
        return Page;
    }

    public async Task<IPage> NewTabAsync()
    {
        Page = await context.NewPageAsync();
        Page.PageError += (_, error) => PageErrors.Add(error);
        return Page;
    }

    /// <summary>Opens a page of the app and waits until the screens are there.</summary>
    public async Task<IPage> OpenReadyAsync(string path)
    {
        await OpenAsync(path);
        await ReadyAsync();
        return Page;
    }

    /// <summary>Goes to a screen of the program that runs already, as its own links do; starts it when it does not run.</summary>
    public async Task<IPage> GoAsync(string path)
    {
        if (Page is null || Page.IsClosed || !await Page.EvaluateAsync<bool>("() => document.documentElement.dataset.ready === 'yes'")) return await OpenReadyAsync(path);
        await Page.EvaluateAsync("path => Blazor.navigateTo(path)", path);
        // A screen notes where the person is once it is drawn.
        await UntilTrueAsync("async path => (await (await import('/device/drafts.js')).lastWhere())?.url === path", path);
        return Page;
    }

    public Task ReadyAsync() => Page.WaitForSelectorAsync("html[data-ready=yes]", new() { State = WaitForSelectorState.Attached, Timeout = 2 * Patience });

    /// <summary>A page of the same origin with none of the program on it, for working on the device module alone.</summary>
    public Task<IPage> OpenBareAsync() => OpenAsync("/look/paper.css");

    /// <summary>An inspection with a few places, written through the device module. Needs an open page.</summary>
    public async Task<Seed> SeedAsync(string standards = "[]")
    {
        var json = await Page.EvaluateAsync<string>(SeedScript, standards);
        return JsonSerializer.Deserialize<Seed>(json, JsonSerializerOptions.Web)!;
    }

    // An invented house; a crawl space, so that the drawing has something below the floor.
    private const string SeedScript = """
        async standards => {
          const { newVisit, write } = await import('/device/writing.js');
          const insp = await newVisit('14 Alder Bend, Harlow Falls', '2026-11-25', false);
          const place = (kind, name, storey, order) => ({ type: 'place.added', body: { kind, name, ...(storey === null ? {} : { storey }), order } });
          const names = await write(insp, [
            { type: 'inspection.opened', body: { property: { address: '14 Alder Bend, Harlow Falls', yearBuilt: 1968, storeys: 1, foundation: 'crawl space', roofForm: 'gable', attic: 'walkable', garage: 'attached', bedrooms: 2, bathrooms: 1 }, date: '2026-11-25', standards: JSON.parse(standards), demo: false } },
            { type: 'device.joined', body: { name: 'Phone' } },
            place('site', 'Site', null, 1), place('roof', 'Roof', null, 2), place('attic', 'Attic', null, 3), place('kitchen', 'Kitchen', 0, 4), place('bathroom', 'Bathroom', 0, 5),
            place('garage', 'Garage', 0, 6), place('crawl space', 'Crawl space', -1, 7), place('mechanical', 'Mechanical closet', 0, 8),
            { type: 'component.added', body: { kind: 'water heater', place: 'writtentogether.10' } },
          ]);
          return JSON.stringify({ insp, site: names[2], kitchen: names[5], bathroom: names[6], crawlSpace: names[8], mechanical: names[9], waterHeater: names[10] });
        }
        """;

    /// <summary>The journal of an inspection as this phone keeps it, line by line.</summary>
    public async Task<IReadOnlyList<JsonElement>> LinesAsync(string inspection)
    {
        var text = await Page.EvaluateAsync<string>("async insp => new TextDecoder().decode(await (await import('/device/writing.js')).linesBeyond(insp, {}))", inspection);
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement)];
    }

    /// <summary>How many lines of a type there are.</summary>
    public async Task<int> CountAsync(string inspection, string type) => (await LinesAsync(inspection)).Count(line => line.GetProperty("type").GetString() == type);

    /// <summary>Waits until so many lines of a type are on the disk.</summary>
    public async Task UntilAsync(string inspection, string type, int count)
    {
        var since = Environment.TickCount64;
        while (Environment.TickCount64 - since < Patience)
        {
            if (await CountAsync(inspection, type) >= count) return;
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Fail($"{count} lines of {type} were expected; there are {await CountAsync(inspection, type)}.");
    }

    /// <summary>Waits until a script that may ask the tables says true.</summary>
    public async Task UntilTrueAsync(string script, object? given = null)
    {
        var since = Environment.TickCount64;
        while (Environment.TickCount64 - since < Patience)
        {
            if (await IsTrueAsync(script, given)) return;
            await Task.Delay(200, TestContext.Current.CancellationToken);
        }

        Assert.Fail("This did not come true in two minutes: " + script);
    }

    // A page that opens itself again while it is asked cannot answer; it is asked once more.
    private async Task<bool> IsTrueAsync(string script, object? given)
    {
        try
        {
            return await Page.EvaluateAsync<bool>(script, given);
        }
        catch (PlaywrightException destroyed) when (destroyed.Message.Contains("context was destroyed", StringComparison.Ordinal))
        {
            return false;
        }
    }

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}

/// <summary>What was seeded.</summary>
public sealed record Seed(string Insp, string Site, string Kitchen, string Bathroom, string CrawlSpace, string Mechanical, string WaterHeater)
{
    /// <summary>A place.</summary>
    public string PlaceUrl(string place) => $"/visit/{Insp}/place/{place.Replace('.', '-')}";

    public string Url(string page = "") => $"/visit/{Insp}{page}";
}
