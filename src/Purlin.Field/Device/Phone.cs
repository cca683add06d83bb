using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.JSInterop;

namespace Purlin.Field.Device;

/// <summary>What came of asking the phone to keep something: kept, with the names of the entries, or words that say why not.</summary>
/// <param name="Ok">Whether it is on the disk.</param>
/// <param name="Names">Names of the entries written.</param>
/// <param name="Words">Why not; or what the work gave back, where it writes no entries.</param>
/// <param name="Sha">Hash of the picture that was kept.</param>
public sealed record Kept(bool Ok, IReadOnlyList<string> Names, string? Words, string? Sha);

/// <summary>
/// The C# side of the border to the device module: one method for each of its functions, and nobody else calls it. Text and bytes cross it,
/// nothing else.
/// </summary>
public sealed partial class Phone(IJSRuntime js) : IAsyncDisposable
{
    private IJSObjectReference? module;
    private DotNetObjectReference<Phone>? self;

    /// <summary>Entries were written or received, by this window or another; carries the inspection, empty when the camera was closed.</summary>
    public event Action<string>? OnWritten;

    /// <summary>The state of sending changed.</summary>
    public event Action? OnSending;

    /// <summary>A place of the drawing was tapped; carries its name.</summary>
    public event Action<string>? OnPlaceTapped;

    /// <summary>A balloon of the drawing was tapped; carries the number of its matter.</summary>
    public event Action<int>? OnMatterTapped;

    /// <summary>A long piece of work went on; carries how far it is, in words.</summary>
    public event Action<string>? OnProgress;

    /// <summary>Called by the device.</summary>
    [JSInvokable]
    public void Written(string inspection) => OnWritten?.Invoke(inspection);

    /// <summary>Called by the device.</summary>
    [JSInvokable]
    public void Sending() => OnSending?.Invoke();

    /// <summary>Called by the device.</summary>
    [JSInvokable]
    public void PlaceTapped(string place) => OnPlaceTapped?.Invoke(place);

    /// <summary>Called by the device.</summary>
    [JSInvokable]
    public void MatterTapped(int number) => OnMatterTapped?.Invoke(number);

    /// <summary>Called by the device.</summary>
    [JSInvokable]
    public void Progress(string words) => OnProgress?.Invoke(words);

    private async ValueTask<IJSObjectReference> OpenAsync()
    {
        if (module is not null) return module;
        module = await js.InvokeAsync<IJSObjectReference>("import", "/device/device.js");
        self = DotNetObjectReference.Create(this);
        await module.InvokeVoidAsync("listen", self);
        return module;
    }

    private async Task<T> AskAsync<T>(string name, params object?[] values) => await (await OpenAsync()).InvokeAsync<T>(name, values);

    private async Task TellAsync(string name, params object?[] values) => await (await OpenAsync()).InvokeVoidAsync(name, values);

    private async Task<Kept> KeepAsync(string name, params object?[] values) => ReadKept(await AskAsync<string>(name, values));

    private async Task<JsonNode?> JsonAsync(string name, params object?[] values) => JsonNode.Parse(await AskAsync<string>(name, values));

    private static Kept ReadKept(string answer)
    {
        using var document = JsonDocument.Parse(answer);
        var root = document.RootElement;
        IReadOnlyList<string> names = root.TryGetProperty("names", out var list) ? [.. list.EnumerateArray().Select(name => name.GetString()!)] : [];
        return new Kept(root.GetProperty("ok").GetBoolean(), names, Text(root, "words"), Text(root, "sha"));
    }

    private static string? Text(JsonElement root, string name) => root.TryGetProperty(name, out var value) ? value.GetString() : null;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        self?.Dispose();
        if (module is not null) await module.DisposeAsync();
    }
}
