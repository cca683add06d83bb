using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Components;
using Purlin.Journal;

namespace Purlin.Field.Device;

/// <summary>Camera, microphone and pictures.</summary>
public sealed partial class Phone
{
    /// <summary>Opens the camera over the whole screen.</summary>
    public Task LargeViewfinderAsync(string inspection, EntryName place, string words) => TellAsync("largeViewfinder", inspection, place.ToString(), words);

    /// <summary>Takes and keeps one picture.</summary>
    public Task<Kept> TakePhotoAsync(string inspection, EntryName place, EntryName? component, EntryName? evidence) =>
        KeepAsync("takePhoto", inspection, place.ToString(), component?.ToString(), evidence?.ToString());

    /// <summary>Keeps pictures from the system's chooser.</summary>
    public Task<Kept> ChoosePhotosAsync(string inspection, EntryName place, EntryName? component, EntryName? evidence) =>
        KeepAsync("choosePhotos", inspection, place.ToString(), component?.ToString(), evidence?.ToString());

    /// <summary>When a picture was being chosen as the page was ended; none when all were kept. Told once.</summary>
    public async Task<DateTimeOffset?> LostPhotoAsync() =>
        await JsonAsync("lostPhoto") is { } intent ? DateTimeOffset.FromUnixTimeMilliseconds((long)intent["at"]!.GetValue<double>()).ToLocalTime() : null;

    /// <summary>Starts a sound note, or ends it and keeps it.</summary>
    public Task<Kept> ToggleSoundAsync(string inspection, EntryName place, EntryName? component) => KeepAsync("toggleSound", inspection, place.ToString(), component?.ToString());

    /// <summary>Whether a sound note is being recorded.</summary>
    public Task<bool> IsRecordingAsync() => AskAsync<bool>("isRecording");

    /// <summary>An address for an <c>img</c> element; empty when the picture is not to be had.</summary>
    public Task<string> PictureAddressAsync(string sha, int size, string inspection) => AskAsync<string>("pictureAddress", sha, size, inspection);

    /// <summary>An address for an <c>audio</c> element; empty when the sound is not to be had.</summary>
    public Task<string> SoundAddressAsync(string sha, string inspection) => AskAsync<string>("soundAddress", sha, inspection);

    /// <summary>Bytes of a picture for the report; empty when it is not to be had.</summary>
    public Task<byte[]> PictureBytesAsync(string sha, int size, string inspection) => AskAsync<byte[]>("pictureBytes", sha, size, inspection);
}
