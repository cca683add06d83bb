namespace Purlin.Field.Tests.App;

/// <summary>One Chromium for all tests, with a made-up camera and microphone.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright playwright = null!;

    public IBrowser Chromium { get; private set; } = null!;

    public static IReadOnlyList<string> Arguments { get; } =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream",
    ];

    public static string Program => Environment.GetEnvironmentVariable("PURLIN_CHROMIUM") is { Length: > 0 } given ? given : "/usr/bin/chromium";

    public async ValueTask InitializeAsync()
    {
        playwright = await Microsoft.Playwright.Playwright.CreateAsync();
        Chromium = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Program, Args = Arguments });
        Assertions.SetDefaultExpectTimeout(120_000);
    }

    public IPlaywright Playwright => playwright;

    /// <summary>A phone held upright, with touch.</summary>
    public static BrowserNewContextOptions PhoneOptions(int width = 390, int height = 844, bool worker = false) => new()
    {
        ViewportSize = new() { Width = width, Height = height },
        IsMobile = true,
        HasTouch = true,
        DeviceScaleFactor = 1,
        ServiceWorkers = worker ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
        AcceptDownloads = true,
    };

    public async Task<Phone> PhoneAsync(string address, int width = 390, int height = 844, bool worker = false)
    {
        var context = await Chromium.NewContextAsync(PhoneOptions(width, height, worker));
        context.SetDefaultTimeout(120_000);
        context.SetDefaultNavigationTimeout(240_000);
        return new(context, address);
    }

    public async ValueTask DisposeAsync()
    {
        await Chromium.DisposeAsync();
        playwright.Dispose();
    }
}
