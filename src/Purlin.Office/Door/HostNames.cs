namespace Purlin.Office.Door;

/// <summary>The names the office answers to. A page elsewhere can point a name of its own at this machine; under that name it is told nothing.</summary>
internal static class HostNames
{
    private static readonly string[] ThisMachine = ["localhost", "127.0.0.1", "[::1]"];

    public static Task Refuse(HttpContext context, RequestDelegate next)
    {
        var options = context.RequestServices.GetRequiredService<OfficeOptions>();
        var host = context.Request.Host.Host;
        var isOurs = ThisMachine.Concat(options.Hosts).Append(options.Public?.Host ?? "localhost").Contains(host, StringComparer.OrdinalIgnoreCase);
        return isOurs ? next(context) : Refusals.Write(context, StatusCodes.Status400BadRequest, "This office does not answer to that name; purlin serve --public or --host adds one.");
    }
}
