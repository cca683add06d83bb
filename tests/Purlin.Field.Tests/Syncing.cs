using System.Net.Http.Json;
using System.Text.Json;
using Purlin.Field.Tests.App;
using Purlin.Journal;
using Purlin.Journal.Fold;

namespace Purlin.Field.Tests;

/// <summary>What was recorded without a signal reaches the office by itself, whole and once, and comes back to other phones.</summary>
public sealed class Syncing(Browser browser) : IAsyncLifetime
{
    private OfficeAtHand office = null!;

    public async ValueTask InitializeAsync() => office = await OfficeAtHand.StartAsync();

    private async Task<Phone> SignedInAsync(bool worker = false)
    {
        var phone = await browser.PhoneAsync(office.Address, worker: worker);
        await phone.OpenBareAsync();
        await OfficeAtHand.SignInAsync(phone);
        return phone;
    }

    private static Task SendAsync(Phone phone) => phone.Page.EvaluateAsync("async () => { await (await import('/device/send.js')).sendNow(); }");

    private static Task<string> StandingAsync(Phone phone, string inspection) =>
        phone.Page.EvaluateAsync<string>("async insp => (await (await import('/device/send.js')).standing(await (await import('/device/store.js')).get('visits', insp))).words", inspection);

    [Fact]
    public async Task What_was_recorded_while_the_office_was_gone_goes_by_itself_when_it_is_back()
    {
        await using var phone = await SignedInAsync(worker: true);
        await phone.OpenReadyAsync("/");
        Assert.True(await phone.Page.EvaluateAsync<bool>("async () => { await navigator.serviceWorker.ready; return true; }"));
        var seed = await phone.SeedAsync();
        await office.StopAsync();

        var page = await phone.OpenReadyAsync(seed.PlaceUrl(seed.Kitchen));
        await page.Locator(".thumb .shutter").TapAsync();
        await phone.UntilAsync(seed.Insp, "photo.taken", 1);
        await page.Locator(".thing").First.TapAsync();
        await page.Locator(".sign").First.TapAsync();
        await phone.UntilAsync(seed.Insp, "observation.made", 1);
        Assert.Equal("Only on this phone", await StandingAsync(phone, seed.Insp));

        await office.StartAgainAsync();
        await page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await phone.UntilTrueAsync("async insp => { const s = await import('/device/send.js'); const v = await (await import('/device/store.js')).get('visits', insp); return (await s.standing(v)).words.startsWith('All at the office'); }", seed.Insp);

        using var client = await office.ClientAsync();
        var heads = await HeadsAsync(client, seed.Insp);
        Assert.Equal((await phone.LinesAsync(seed.Insp)).Count, heads.Values.Sum());
        var sha = (await phone.LinesAsync(seed.Insp)).First(line => line.GetProperty("type").GetString() == "photo.taken").GetProperty("body").GetProperty("sha").GetString()!;
        using var blob = await client.GetAsync($"/blobs/{sha}", TestContext.Current.CancellationToken);
        var bytes = await blob.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.True(blob.IsSuccessStatusCode, System.Text.Encoding.UTF8.GetString(bytes));
        Assert.Equal(sha, Sha.Of(bytes));
    }

    private static async Task<Dictionary<string, int>> HeadsAsync(HttpClient client, string inspection)
    {
        var answer = await client.GetFromJsonAsync<JsonElement>($"/sync/{inspection}/heads", TestContext.Current.CancellationToken);
        return answer.GetProperty("heads").EnumerateObject().ToDictionary(head => head.Name, head => head.Value.GetInt32(), StringComparer.Ordinal);
    }

    [Fact]
    public async Task Two_phones_that_wrote_apart_hold_the_same_and_show_where_they_differ()
    {
        await using var first = await SignedInAsync();
        var seed = await first.SeedAsync();
        await SendAsync(first);
        await using var second = await SignedInAsync();
        Assert.Equal("", await second.Page.EvaluateAsync<string>("async insp => { const d = await import('/device/send.js'); await d.pull(insp); return ''; }", seed.Insp));

        // Apart from one another: the same fact, said differently.
        foreach (var (phone, year) in ((Phone, int)[])[(first, 1994), (second, 2004)])
        {
            await phone.Page.EvaluateAsync("""
                async ([insp, component, year]) => {
                  const { write } = await import('/device/writing.js');
                  await write(insp, [{ type: 'fact.stated', body: { component, fact: 'year', value: Number(year), basis: 'nameplate', replaces: [] } }, { type: 'note.written', body: { part: `from ${year}`, text: `written in ${year}` } }]);
                }
                """, new[] { seed.Insp, seed.WaterHeater, $"{year}" });
        }

        await SendAsync(second);
        await SendAsync(first);
        await SendAsync(second);
        var one = await FoldAsync(first, seed.Insp);
        var other = await FoldAsync(second, seed.Insp);
        Assert.Equal(one.Heads.OrderBy(head => head.Key, StringComparer.Ordinal), other.Heads.OrderBy(head => head.Key, StringComparer.Ordinal));
        Assert.Equal(2, one.Notes.Count);
        var slot = one.Components.First(component => component.Id == EntryName.Parse(seed.WaterHeater)).Facts["year"];
        Assert.Equal([1994d, 2004d], slot.Standing.Select(stated => stated.Value.Value.Number!.Value).Order());
        Assert.Contains(other.Unsettled, unsettled => unsettled.Kind == UnsettledKind.Divergence);

        // A person settles it, in place, and then one answer stands on both.
        var page = await first.OpenReadyAsync(seed.Url("/issue"));
        await page.GetByRole(AriaRole.Button, new() { Name = "year: 2004" }).TapAsync();
        await first.UntilAsync(seed.Insp, "fact.stated", 3);
        await SendAsync(first);
        await SendAsync(second);
        Assert.Equal(2004, (await FoldAsync(second, seed.Insp)).Components.First(component => component.Id == EntryName.Parse(seed.WaterHeater)).Fact("year")!.Value.Number);
        Assert.Empty((await FoldAsync(second, seed.Insp)).Unsettled);
    }

    private static async Task<Inspection> FoldAsync(Phone phone, string inspection) =>
        Folding.Fold((await phone.LinesAsync(inspection)).Select(line => EntryLine.Read(System.Text.Encoding.UTF8.GetBytes(line.GetRawText())).OrThrow()));

    [Fact]
    public async Task Signed_out_everything_is_kept_and_arrives_after_signing_in()
    {
        await using var phone = await browser.PhoneAsync(office.Address);
        await phone.OpenReadyAsync("/");
        var seed = await phone.SeedAsync();
        await SendAsync(phone);
        await phone.OpenReadyAsync(seed.Url());
        await Assertions.Expect(phone.Page.GetByText("Signed out of the office. Everything is kept here")).ToBeVisibleAsync();
        await phone.Page.GetByRole(AriaRole.Link, new() { Name = "Sign in to the office" }).TapAsync();
        await phone.Page.Locator("form input").FillAsync(OfficeAtHand.Code);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".visit .safe")).ToContainTextAsync("All at the office");
        using var client = await office.ClientAsync();
        Assert.Equal((await phone.LinesAsync(seed.Insp)).Count, (await HeadsAsync(client, seed.Insp)).Values.Sum());
    }

    [Fact]
    public async Task A_picture_missing_at_the_office_is_counted_and_sent_again_only_as_far_as_needed()
    {
        await using var phone = await SignedInAsync();
        var seed = await phone.SeedAsync();
        var sizes = await phone.Page.EvaluateAsync<int[]>("""
            async insp => {
              const { keepPhoto } = await import('/device/photo.js');
              const jpeg = async seed => { const canvas = new OffscreenCanvas(1600, 1200); const ink = canvas.getContext('2d'); const data = ink.createImageData(1600, 1200); for (let at = 0; at < data.data.length; at += 65536) crypto.getRandomValues(data.data.subarray(at, Math.min(at + 65536, data.data.length))); for (let at = 3; at < data.data.length; at += 4) data.data[at] = 255; ink.putImageData(data, 0, 0); return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 }); };
              const sizes = [];
              for (let turn = 0; turn < 2; turn++) { const blob = await jpeg(turn); sizes.push(blob.size); await keepPhoto(blob, { insp }); }
              return sizes;
            }
            """, seed.Insp);
        // From the second chunk on everything is refused, as if the signal had gone; once it is back, the picture goes on from there.
        var patched = 0;
        var isGone = true;
        long sent = 0;
        await phone.Context.RouteAsync("**/blobs/*", async route =>
        {
            if (route.Request.Method == "PATCH")
            {
                if (++patched >= 2 && isGone)
                {
                    await route.AbortAsync();
                    return;
                }

                sent += route.Request.PostDataBuffer!.Length;
            }

            await route.ContinueAsync();
        });
        Assert.True(sizes.All(size => size > 1_100_000), $"the pictures are {sizes[0]} and {sizes[1]} bytes, too small for two chunks");
        await SendAsync(phone);
        Assert.Equal("0 of 2 photographs at the office", await StandingAsync(phone, seed.Insp));
        isGone = false;
        await SendAsync(phone);
        Assert.StartsWith("All at the office", await StandingAsync(phone, seed.Insp), StringComparison.Ordinal);
        Assert.Equal(sizes.Sum(), sent);
    }

    public async ValueTask DisposeAsync() => await office.DisposeAsync();
}
