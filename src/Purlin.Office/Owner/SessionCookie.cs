namespace Purlin.Office.Owner;

/// <summary>The session's cookie: bound to this host when the connection is encrypted; never readable by scripts, never sent along from other sites.</summary>
internal static class SessionCookie
{
    private const string Plain = "purlin-session";
    private const string Bound = "__Host-purlin-session";

    public static string? Read(HttpContext context) => context.Request.Cookies[context.Request.IsHttps ? Bound : Plain];

    public static void Write(HttpContext context, string token) => context.Response.Cookies.Append(context.Request.IsHttps ? Bound : Plain, token, Options(context));

    public static void Clear(HttpContext context) => context.Response.Cookies.Delete(context.Request.IsHttps ? Bound : Plain, Options(context));

    private static CookieOptions Options(HttpContext context) => new()
    {
        HttpOnly = true,
        SameSite = SameSiteMode.Strict,
        Secure = context.Request.IsHttps,
        Path = "/",
        MaxAge = TimeSpan.FromDays(30),
    };
}
