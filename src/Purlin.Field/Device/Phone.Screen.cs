using Microsoft.AspNetCore.Components;

namespace Purlin.Field.Device;

/// <summary>The screen itself: where one is, drafts, settings, what is shown and handed over.</summary>
public sealed partial class Phone
{
    /// <summary>The screens are there and take over from the capture screen.</summary>
    public Task ProgramReadyAsync() => TellAsync("programReady");

    /// <summary>Where the person is, kept for the next start.</summary>
    public Task NoteWhereAsync(string address, string name) => TellAsync("noteWhere", address, name);

    /// <summary>The thing that is chosen there.</summary>
    public Task NoteChosenAsync(string? component) => TellAsync("noteChosen", component);

    /// <summary>The thing that was chosen at this address when the program was ended; empty when one comes from elsewhere.</summary>
    public Task<string> ChosenAtAsync(string address) => AskAsync<string>("chosenAt", address);

    /// <summary>Puts the page where it was when the program was ended; once, and only until the person touches it.</summary>
    public Task ScrollBackAsync(string address) => TellAsync("scrollBack", address);

    /// <summary>Brings a part into sight when it is not.</summary>
    public Task ShowAsync(ElementReference element) => TellAsync("show", element);

    /// <summary>Brings the page to its top.</summary>
    public Task ToTopAsync() => TellAsync("toTop");

    /// <summary>Half-typed words of a field; empty when there are none.</summary>
    public Task<string> DraftAsync(string key) => AskAsync<string>("draft", key);

    /// <summary>Forgets the half-typed words of a field.</summary>
    public Task ClearDraftAsync(string key) => TellAsync("clearDraft", key);

    /// <summary>Forgets the half-typed words of every field whose key begins so.</summary>
    public Task ClearDraftsAsync(string start) => TellAsync("clearDrafts", start);

    /// <summary>A setting of this phone; empty when it was never made.</summary>
    public Task<string> SettingAsync(string key) => AskAsync<string>("setting", key);

    /// <summary>Makes a setting.</summary>
    public Task SetSettingAsync(string key, string value) => TellAsync("setSetting", key, value);

    /// <summary>How the phone stands before a visit.</summary>
    public async Task<Meter> MeterAsync() => Meter.Of(await JsonAsync("meter"));

    /// <summary>Asks the browser not to clear what is kept; true when it promises.</summary>
    public Task<bool> AskToKeepAsync() => AskAsync<bool>("askToKeep");

    /// <summary>Starts a version that waits; gives why not, or nothing.</summary>
    public Task<string> UseNewerAsync() => AskAsync<string>("useNewer");

    /// <summary>Shows a page in a frame without any rights.</summary>
    public Task ShowPageAsync(ElementReference frame, string html) => TellAsync("showPage", frame, html);

    /// <summary>Shows a page of an edition that is on this phone.</summary>
    public Task ShowPaperAsync(ElementReference frame, string sha) => TellAsync("showPaper", frame, sha);

    /// <summary>Hands bytes to the person: the share sheet where there is one, else a download.</summary>
    public Task HandAsync(byte[] bytes, string name, string type) => TellAsync("hand", bytes, name, type);
}
