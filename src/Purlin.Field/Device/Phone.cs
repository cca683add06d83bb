using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Purlin.Journal;

namespace Purlin.Field.Device;

/// <summary>What came of asking the phone to keep something: kept, with the names of the entries, or words that say why not.</summary>
public sealed record Kept(bool Ok, IReadOnlyList<string> Names, string? Words, string? Sha);

/// <summary>The C# side of the border to the device module: text and bytes cross it, nothing else.</summary>
public sealed class Phone(IJSRuntime js) : IAsyncDisposable
{
    private IJSObjectReference? module;
    private DotNetObjectReference<Phone>? self;

    /// <summary>Entries were written or received, by this window or another; carries the inspection.</summary>
    public event Action<string>? OnWritten;

    /// <summary>The state of sending changed.</summary>
    public event Action? OnSending;

    /// <summary>A place of the drawing was tapped; carries its name.</summary>
    public event Action<string>? OnPlaceTapped;

    /// <summary>Opens the border; everything else waits for it.</summary>
    public async ValueTask<IJSObjectReference> OpenAsync()
    {
        if (module is not null) return module;
        module = await js.InvokeAsync<IJSObjectReference>("import", "/device/device.js");
        self = DotNetObjectReference.Create(this);
        await module.InvokeVoidAsync("listen", self);
        return module;
    }

    [JSInvokable]
    public void Written(string inspection) => OnWritten?.Invoke(inspection);

    [JSInvokable]
    public void Sending() => OnSending?.Invoke();

    [JSInvokable]
    public void PlaceTapped(string place) => OnPlaceTapped?.Invoke(place);

    /// <summary>Calls the device for a value.</summary>
    public async Task<T> AskAsync<T>(string name, params object?[] values) => await (await OpenAsync()).InvokeAsync<T>(name, values);

    /// <summary>Calls the device.</summary>
    public async Task TellAsync(string name, params object?[] values) => await (await OpenAsync()).InvokeVoidAsync(name, values);

    /// <summary>Calls the device for something that must be kept.</summary>
    public async Task<Kept> KeepAsync(string name, params object?[] values) => ReadKept(await AskAsync<string>(name, values));

    /// <summary>Calls the device for JSON.</summary>
    public async Task<JsonNode?> JsonAsync(string name, params object?[] values) => JsonNode.Parse(await AskAsync<string>(name, values));

    /// <summary>Writes acts in one transaction; the answer comes once the disk has them.</summary>
    public async Task<Kept> WriteAsync(string inspection, string what, IEnumerable<EntryBody> bodies)
    {
        JsonArray acts = [.. bodies.Select(body => (JsonNode)new JsonObject { ["type"] = body.Type, ["body"] = JsonNode.Parse(BodyJson.Write(body)) })];
        return await KeepAsync("write", inspection, acts.ToJsonString(), what);
    }

    private static Kept ReadKept(string answer)
    {
        using var document = JsonDocument.Parse(answer);
        var root = document.RootElement;
        IReadOnlyList<string> names = root.TryGetProperty("names", out var list) ? [.. list.EnumerateArray().Select(name => name.GetString()!)] : [];
        return new Kept(root.GetProperty("ok").GetBoolean(), names, Text(root, "words"), Text(root, "sha"));
    }

    private static string? Text(JsonElement root, string name) => root.TryGetProperty(name, out var value) ? value.GetString() : null;

    public async ValueTask DisposeAsync()
    {
        self?.Dispose();
        if (module is not null) await module.DisposeAsync();
    }
}
