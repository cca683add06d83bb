using System.Text.Json.Nodes;

namespace Purlin.Field.Device;

/// <summary>What is safe where, of one inspection.</summary>
/// <param name="Words">In words.</param>
/// <param name="Entries">Lines here.</param>
/// <param name="EntriesAtOffice">Lines the office has of them.</param>
/// <param name="Photos">Pictures and sounds that the lines name.</param>
/// <param name="PhotosAtOffice">Those the office has whole, by their hash.</param>
public sealed record SafeAt(string Words, int Entries, int EntriesAtOffice, int Photos, int PhotosAtOffice);

/// <summary>How it stands between this phone and the office.</summary>
/// <param name="State"><c>idle</c>, <c>sending</c>, <c>waiting</c> or <c>signed out</c>.</param>
/// <param name="Words">What is in the way, in words.</param>
/// <param name="IsAlone">Nothing is to be sent from this phone.</param>
/// <param name="HasOffice">Whether an office has ever answered at this address.</param>
public sealed record OfficeState(string State, string Words, bool IsAlone, bool HasOffice)
{
    /// <summary>The office asks who this is.</summary>
    public bool IsSignedOut => State == "signed out";

    /// <summary>Something is on its way.</summary>
    public bool IsSending => State == "sending";
}

/// <summary>An inspection that the office holds and this phone does not.</summary>
public sealed record OfficeVisit(string Id, string Words);

/// <summary>A device that is signed in at the office.</summary>
/// <param name="Id">Names its session.</param>
/// <param name="Device">The name under which it writes; empty for a browser that writes none.</param>
/// <param name="Since">When it signed in; none when that was not kept.</param>
/// <param name="Seen">When it was last there, to the hour; none when that was not kept.</param>
/// <param name="Here">Whether it is this one.</param>
public sealed record SignedIn(string Id, string Device, DateTimeOffset? Since, DateTimeOffset? Seen, bool Here);

/// <summary>A link that signs one more device in, once.</summary>
/// <param name="Address">To be opened there.</param>
/// <param name="Size">Units of the code, its margin counted.</param>
/// <param name="Path">Its dark units as the path of a drawing.</param>
public sealed record LinkForOther(string Address, int Size, string Path);

/// <summary>Sending, signing in, editions.</summary>
public sealed partial class Phone
{
    /// <summary>What is safe where; none for an inspection that is not here.</summary>
    public async Task<SafeAt?> StandingAsync(string inspection) => await JsonAsync("standing", inspection) is { } node
        ? new SafeAt((string)node["words"]!, (int)node["entries"]!, (int)node["entriesAtOffice"]!, (int)node["photos"]!, (int)node["photosAtOffice"]!)
        : null;

    /// <summary>How it stands between this phone and the office.</summary>
    public async Task<OfficeState> SendingStateAsync()
    {
        var node = await JsonAsync("sendingState");
        return new OfficeState((string?)node?["state"] ?? "", (string?)node?["words"] ?? "", (bool?)node?["isAlone"] ?? false, node?["lastContact"]?.GetValue<double>() > 0);
    }

    /// <summary>Sends as soon as it can.</summary>
    public Task SendNowAsync() => TellAsync("sendNow");

    /// <summary>Sends everything and waits for the end; gives why it is not all there, or nothing.</summary>
    public Task<string> SendAllAsync() => AskAsync<string>("sendAll");

    /// <summary>Signs in; gives why not, or nothing.</summary>
    public Task<string> SignInAsync(string code) => AskAsync<string>("signIn", code);

    /// <summary>The devices that are signed in; none when the office does not say.</summary>
    public async Task<IReadOnlyList<SignedIn>> SignedInAsync() =>
    [
        .. (await JsonAsync("signedIn"))!.AsArray().Select(node => new SignedIn((string)node!["id"]!, (string)node["device"]!, (DateTimeOffset?)node["since"], (DateTimeOffset?)node["seen"], (bool)node["here"]!)),
    ];

    /// <summary>Signs another device out; gives why not, or nothing.</summary>
    public Task<string> SignOutOtherAsync(string id) => AskAsync<string>("signOutOther", id);

    /// <summary>A link that signs one more device in, once; none when the office gives none.</summary>
    public async Task<LinkForOther?> LinkForOtherAsync() =>
        await JsonAsync("linkForOther") is { } node ? new LinkForOther((string)node["address"]!, (int)node["size"]!, (string)node["path"]!) : null;

    /// <summary>Inspections that the office holds and this phone does not.</summary>
    public async Task<IReadOnlyList<OfficeVisit>> ElsewhereAsync() =>
    [
        .. (await JsonAsync("elsewhere"))!.AsArray().Select(node => new OfficeVisit((string)node!["id"]!, $"{(string?)node["address"] ?? "Inspection"}{((bool?)node["demo"] == true ? ", invented for practice" : "")}")),
    ];

    /// <summary>Brings an inspection from the office; gives why not, or nothing.</summary>
    public Task<string> BringAsync(string inspection) => AskAsync<string>("bring", inspection);

    /// <summary>Whether nothing is to be sent from this phone.</summary>
    public Task KeepToPhoneAsync(bool isAlone) => TellAsync("keepToPhone", isAlone);

    /// <summary>Asks the office to seal an edition; gives what came of it, in words.</summary>
    public Task<string> AskToSealAsync(string inspection) => AskAsync<string>("askToSeal", inspection);

    /// <summary>Brings a paper of an edition here, where it then stays; gives why not, or nothing.</summary>
    public Task<string> BringPaperAsync(string inspection, int number, string kind, string sha) => AskAsync<string>("bringPaper", inspection, number, kind, sha);

    /// <summary>The fingerprint of this phone's own key, with which it signs where no office does.</summary>
    public Task<string> PhoneKeyAsync() => AskAsync<string>("phoneKey");

    /// <summary>Keeps a paper of an edition that was made here; gives its hash.</summary>
    public Task<string> KeepPaperAsync(string inspection, byte[] paper, string type) => AskAsync<string>("keepPaper", inspection, paper, type);

    /// <summary>Signs for all lines of an inspection that are here now.</summary>
    public Task SignForAsync(string inspection) => TellAsync("signFor", inspection);

    /// <summary>Hands a paper that is here to the person: <c>shared</c>, <c>saved</c> or <c>left</c>.</summary>
    public Task<string> HandPaperAsync(string sha, string name, string type) => AskAsync<string>("handPaper", sha, name, type);
}
