using System.Text.Json;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>
/// The device module in the browser against the vectors that the rooms are held to as well. The same checks run outside the browser
/// (tests/device), where they cost a second.
/// </summary>
public sealed class Vectors(Browser browser)
{
    [Fact]
    public async Task Every_vector_holds_in_the_browser()
    {
        await using var host = await TinyHost.StartAsync();
        host.Put("/device/checks.js", await File.ReadAllBytesAsync(Path.Combine(PublishedApp.Repository, "tests", "device", "checks.js"), TestContext.Current.CancellationToken));
        await using var phone = await browser.PhoneAsync(host.Address);
        await phone.OpenBareAsync();
        var names = await phone.Page.EvaluateAsync<string[]>("async () => Object.keys((await import('/device/checks.js')).checks)");
        Assert.True(names.Length >= 12);
        foreach (var name in names)
        {
            var vectors = await File.ReadAllTextAsync(Path.Combine(PublishedApp.Repository, "tests", "vectors", $"{name}.json"), TestContext.Current.CancellationToken);
            var answer = await phone.Page.EvaluateAsync<JsonElement>("async ([name, vectors]) => (await import('/device/checks.js')).run(name, JSON.parse(vectors), '/device')", new[] { name, vectors });
            Assert.Empty(answer.GetProperty("wrong").EnumerateArray().Select(wrong => wrong.GetString()));
            Assert.True(answer.GetProperty("ran").GetInt32() > 0, $"{name} compared nothing");
        }
    }
}
