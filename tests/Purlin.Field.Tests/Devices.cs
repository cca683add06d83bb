using System.Net;
using Purlin.Field.Tests.App;

namespace Purlin.Field.Tests;

/// <summary>One more device is let in by a code for its camera, is seen among those that are signed in, and is signed out alone.</summary>
public sealed class Devices(Browser browser) : IAsyncLifetime
{
    private OfficeAtHand office = null!;
    private Phone phone = null!;

    public async ValueTask InitializeAsync() => office = await OfficeAtHand.StartAsync();

    [Fact]
    public async Task A_second_phone_is_let_in_by_a_code_and_signed_out_from_the_first()
    {
        phone = await browser.PhoneAsync(office.Address);
        await phone.OpenReadyAsync("/");
        await OfficeAtHand.SignInAsync(phone);
        await phone.UntilTrueAsync("async () => (await (await import('/device/store.js')).get('meta', 'lastContact')) > 0");
        await phone.GoAsync("/settings");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Sign in another device" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".code svg path")).ToHaveAttributeAsync("d", new System.Text.RegularExpressions.Regex("^M4 4h1"));
        await phone.Page.MeetsAsync("settings with a code");

        using var other = await office.ClientAsync();
        other.DefaultRequestHeaders.Add("X-Device", "secondone");
        Assert.Equal(HttpStatusCode.OK, (await other.GetAsync("/office/inspections", TestContext.Current.CancellationToken)).StatusCode);
        await phone.GoAsync("/");
        await phone.GoAsync("/settings");
        await phone.Page.Locator(".devices li", new() { HasText = "secondone" }).GetByRole(AriaRole.Button, new() { Name = "Sign out" }).TapAsync();
        await Assertions.Expect(phone.Page.Locator(".devices li", new() { HasText = "secondone" })).ToHaveCountAsync(0);
        Assert.Equal(HttpStatusCode.Unauthorized, (await other.GetAsync("/office/inspections", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Empty(phone.PageErrors);
    }

    public async ValueTask DisposeAsync()
    {
        if (phone is not null) await phone.DisposeAsync();
        await office.DisposeAsync();
    }
}
