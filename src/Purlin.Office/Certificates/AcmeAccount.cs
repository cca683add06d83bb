using System.Buffers.Text;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Purlin.Office.Certificates;

/// <summary>Signed requests to an authority: RFC 8555, section 6. Each carries a nonce; a refused nonce brings a new one and is tried again.</summary>
internal sealed class AcmeAccount(HttpClient http, ECDsa key, string name)
{
    // An authority may refuse good nonces now and then; one that refuses ten is out of order.
    private const int Tries = 10;

    private string? nonce;
    private string? account;

    private JsonObject Directory { get; set; } = [];

    /// <summary>The key's thumbprint (RFC 7638): what the authority's question is answered with.</summary>
    public string Thumbprint
    {
        get
        {
            var (x, y) = Point();
            return Base64Url.EncodeToString(SHA256.HashData(Encoding.ASCII.GetBytes($$"""{"crv":"P-256","kty":"EC","x":"{{x}}","y":"{{y}}"}""")));
        }
    }

    /// <summary>Reads the directory and makes the account, or finds the one of this key.</summary>
    public async Task Open(Uri directory, CancellationToken cancel)
    {
        Directory = JsonNode.Parse(await http.GetStringAsync(directory, cancel))!.AsObject();
        var (answer, _) = await Post((string)Directory["newAccount"]!, new JsonObject { ["termsOfServiceAgreed"] = true }, cancel);
        account = answer.Headers.Location?.ToString() ?? throw new AcmeRefusal("The certificate authority made no account.");
    }

    /// <summary>Orders a certificate for the name.</summary>
    public async Task<(string Address, JsonObject Order)> Order(CancellationToken cancel)
    {
        JsonObject wanted = new() { ["identifiers"] = new JsonArray(new JsonObject { ["type"] = "dns", ["value"] = name }) };
        var (answer, body) = await Post((string)Directory["newOrder"]!, wanted, cancel);
        return (answer.Headers.Location?.ToString() ?? throw new AcmeRefusal("The certificate authority took no order."), Object(body));
    }

    /// <summary>Asks for something that is there (RFC 8555, section 6.3), or with a body changes it.</summary>
    public async Task<JsonObject> Ask(string address, JsonObject? body, CancellationToken cancel) => Object((await Post(address, body, cancel)).Body);

    /// <summary>The same as text, for the certificate itself.</summary>
    public async Task<string> Text(string address, CancellationToken cancel) => (await Post(address, null, cancel)).Body;

    private static JsonObject Object(string body) => JsonNode.Parse(body) as JsonObject ?? throw new AcmeRefusal("The certificate authority answered with something else than was asked for.");

    private async Task<(HttpResponseMessage Answer, string Body)> Post(string address, JsonObject? payload, CancellationToken cancel)
    {
        for (var tries = 1; ; tries++)
        {
            nonce ??= await Nonce(cancel);
            using var content = new ByteArrayContent(Signed(address, payload));
            content.Headers.ContentType = new MediaTypeHeaderValue("application/jose+json");
            var answer = await http.PostAsync(address, content, cancel);
            nonce = answer.Headers.TryGetValues("Replay-Nonce", out var next) ? next.First() : null;
            var body = await answer.Content.ReadAsStringAsync(cancel);
            if (answer.IsSuccessStatusCode) return (answer, body);
            var problem = Problem(body);
            var type = (string?)problem?["type"];
            if (type == "urn:ietf:params:acme:error:badNonce" && tries < Tries) continue;
            var wait = answer.Headers.RetryAfter?.Delta;
            throw AcmeRefusal.Of(name, type, (string?)problem?["detail"] ?? $"status {(int)answer.StatusCode}", wait);
        }
    }

    private static JsonObject? Problem(string body)
    {
        try
        {
            return JsonNode.Parse(body) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private async Task<string> Nonce(CancellationToken cancel)
    {
        using var answer = await http.SendAsync(new HttpRequestMessage(HttpMethod.Head, (string)Directory["newNonce"]!), cancel);
        return answer.Headers.GetValues("Replay-Nonce").First();
    }

    private byte[] Signed(string address, JsonObject? payload)
    {
        JsonObject head = new() { ["alg"] = "ES256", ["nonce"] = nonce, ["url"] = address };
        var (x, y) = Point();
        if (account is null) head["jwk"] = new JsonObject { ["crv"] = "P-256", ["kty"] = "EC", ["x"] = x, ["y"] = y };
        else head["kid"] = account;
        var protectedPart = Base64Url.EncodeToString(JsonSerializer.SerializeToUtf8Bytes(head));
        var payloadPart = payload is null ? "" : Base64Url.EncodeToString(JsonSerializer.SerializeToUtf8Bytes(payload));
        var signature = key.SignData(Encoding.ASCII.GetBytes($"{protectedPart}.{payloadPart}"), HashAlgorithmName.SHA256);
        return JsonSerializer.SerializeToUtf8Bytes(new JsonObject { ["protected"] = protectedPart, ["payload"] = payloadPart, ["signature"] = Base64Url.EncodeToString(signature) });
    }

    private (string X, string Y) Point()
    {
        var point = key.ExportParameters(includePrivateParameters: false).Q;
        return (Base64Url.EncodeToString(point.X), Base64Url.EncodeToString(point.Y));
    }
}
