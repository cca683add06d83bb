using System.Text.Json;

namespace Purlin.Office.Door;

/// <summary>Every refusal says what is the matter: those that the web server itself makes with nothing but a number are given their sentence here.</summary>
internal static class StatusWords
{
    public static async Task Say(HttpContext context, RequestDelegate next)
    {
        await next(context);
        var response = context.Response;
        if (response.HasStarted || response.StatusCode < 400 || response.ContentLength is > 0 || response.ContentType is not null || HttpMethods.IsHead(context.Request.Method)) return;
        if (Of(response.StatusCode) is not { } words) return;
        response.ContentType = "application/json; charset=utf-8";
        await response.WriteAsync(JsonSerializer.Serialize(new Refusals.Refused(words), JsonSerializerOptions.Web));
    }

    private static string? Of(int status) => status switch
    {
        StatusCodes.Status400BadRequest => "The request is not one the office understands.",
        StatusCodes.Status404NotFound => "There is nothing at this address.",
        StatusCodes.Status405MethodNotAllowed => "This address is not used in this way.",
        StatusCodes.Status413PayloadTooLarge => "This is more than is taken at a time.",
        StatusCodes.Status414UriTooLong => "The address is too long.",
        StatusCodes.Status415UnsupportedMediaType => "This comes in another form than the office takes.",
        _ => null,
    };
}
