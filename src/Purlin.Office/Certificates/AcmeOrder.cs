using System.Buffers.Text;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text.Json.Nodes;

namespace Purlin.Office.Certificates;

/// <summary>One certificate from order to chain: RFC 8555, section 7.4, with the question over plain http of section 8.3.</summary>
internal static class AcmeOrder
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);
    private const int Looks = 60;

    /// <summary>Orders, answers, fetches.</summary>
    /// <returns>The certificate with those above it, PEM.</returns>
    /// <exception cref="AcmeRefusal">The authority gave none; the message says why.</exception>
    public static async Task<string> Run(AcmeAccount account, string name, ECDsa key, ChallengeAnswers answers, CancellationToken cancel)
    {
        var (address, order) = await account.Order(cancel);
        foreach (var permission in List(order, "authorizations")) await Prove(account, permission!.ToString(), name, answers, cancel);
        JsonObject request = new() { ["csr"] = Base64Url.EncodeToString(Request(name, key)) };
        await account.Ask(Text(order, "finalize"), request, cancel);
        var done = await Until(account, address, name, cancel);
        return await account.Text(Text(done, "certificate"), cancel);
    }

    private static async Task Prove(AcmeAccount account, string address, string name, ChallengeAnswers answers, CancellationToken cancel)
    {
        var permission = await account.Ask(address, null, cancel);
        if ((string?)permission["status"] == "valid") return;
        var challenge = List(permission, "challenges").OfType<JsonObject>().FirstOrDefault(one => (string?)one["type"] == "http-01")
            ?? throw new AcmeRefusal($"The certificate authority does not ask for {name} over plain http, the one way this office can answer.");
        var token = Text(challenge, "token");
        answers.Add(token, $"{token}.{account.Thumbprint}");
        try
        {
            await account.Ask(Text(challenge, "url"), [], cancel);
            await Until(account, address, name, cancel);
        }
        finally
        {
            answers.Remove(token);
        }
    }

    /// <summary>Looks again until it is decided.</summary>
    private static async Task<JsonObject> Until(AcmeAccount account, string address, string name, CancellationToken cancel)
    {
        for (var look = 0; look < Looks; look++)
        {
            var state = await account.Ask(address, null, cancel);
            switch ((string?)state["status"])
            {
                case "valid":
                    return state;
                case "invalid":
                    var error = state["error"] ?? state["challenges"]?.AsArray().Select(one => one!["error"]).FirstOrDefault(one => one is not null);
                    throw AcmeRefusal.Of(name, (string?)error?["type"], (string?)error?["detail"], null);
            }

            await Task.Delay(Between, cancel);
        }

        throw new AcmeRefusal($"The certificate authority had not decided about {name} after {Looks} seconds.");
    }

    private static string Text(JsonObject from, string member) => (string?)from[member] ?? throw new AcmeRefusal($"The certificate authority left out {member}.");

    private static JsonArray List(JsonObject from, string member) => from[member] as JsonArray ?? throw new AcmeRefusal($"The certificate authority left out {member}.");

    private static byte[] Request(string name, ECDsa key)
    {
        CertificateRequest request = new(new X500DistinguishedName($"CN={name}"), key, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder names = new();
        names.AddDnsName(name);
        request.CertificateExtensions.Add(names.Build());
        return request.CreateSigningRequest();
    }
}
