using System.Collections.Concurrent;

namespace Purlin.Office.Certificates;

/// <summary>Answers to the authority's questions while an order runs.</summary>
internal sealed class ChallengeAnswers
{
    private readonly ConcurrentDictionary<string, string> answers = new(StringComparer.Ordinal);

    public void Add(string token, string answer) => answers[token] = answer;

    public void Remove(string token) => answers.TryRemove(token, out _);

    /// <summary>Answers at the address that RFC 8555, section 8.3, names; everything else passes.</summary>
    public Task Answer(HttpContext context, RequestDelegate next)
    {
        if (!context.Request.Path.StartsWithSegments("/.well-known/acme-challenge", StringComparison.Ordinal, out var rest)) return next(context);
        if (!answers.TryGetValue(rest.Value?.TrimStart('/') ?? "", out var answer)) return Refusals.Write(context, StatusCodes.Status404NotFound, "There is nothing at this address.");
        context.Response.ContentType = "application/octet-stream";
        return context.Response.WriteAsync(answer);
    }
}
