using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Extensions.Time.Testing;

namespace Purlin.Office.Tests.Office;

/// <summary>Who is signed in, on which devices.</summary>
public sealed class SessionTests
{
    [Fact]
    public async Task Devices_are_listed_and_each_can_be_signed_out_alone()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
        await using var office = await RunningOffice.Start(with: options => options with { Clock = clock });
        using var first = office.NewClient();
        await first.PostAsJsonAsync("/office/session", new { code = RunningOffice.Code });
        var link = (await (await first.PostAsJsonAsync("/office/sessions/link", new { })).Content.ReadFromJsonAsync<JsonNode>())!;
        Assert.StartsWith($"http://{office.Address.Authority}/office/enter#", (string)link["address"]!, StringComparison.Ordinal);
        // A code of version 3 or more has 29 modules and a margin of four on each side (ISO/IEC 18004).
        Assert.True((int)link["size"]! >= 37);
        Assert.StartsWith("M4 4h1v1h-1z", (string)link["path"]!, StringComparison.Ordinal);
        using var second = office.NewClient();
        second.DefaultRequestHeaders.Add("X-Device", "cwq15mvksk");
        Assert.Equal(HttpStatusCode.NoContent, (await second.PostAsJsonAsync("/office/session", new { code = ((string)link["address"]!).Split('#')[1] })).StatusCode);
        clock.Advance(TimeSpan.FromHours(3));
        Assert.Equal(HttpStatusCode.OK, (await second.GetAsync("/office/inspections")).StatusCode);

        var listed = (await first.GetFromJsonAsync<JsonArray>("/office/sessions"))!;
        var other = Assert.Single(listed, one => (string)one!["device"]! == "cwq15mvksk")!;
        Assert.Equal((false, clock.GetUtcNow(), clock.GetUtcNow().AddHours(-3)), ((bool)other["here"]!, (DateTimeOffset)other["seen"]!, (DateTimeOffset)other["since"]!));
        Assert.Single(listed, one => (bool)one!["here"]!);
        Assert.Equal(HttpStatusCode.NotFound, (await first.DeleteAsync("/office/sessions/0000000000000000")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await first.DeleteAsync("/office/sessions/%25")).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await first.DeleteAsync($"/office/sessions/{(string)other["id"]!}")).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await second.GetAsync("/office/inspections")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await first.GetAsync("/office/inspections")).StatusCode);
    }
}
