using Microsoft.AspNetCore.Connections;

namespace Purlin.Office.Door;

/// <summary>
/// Who is connected. Idle connections can never shut the office: when there are very many, the one that has been silent longest makes room for the newest.
/// A connection that is being answered is left alone.
/// </summary>
internal sealed class Callers(TimeProvider clock)
{
    /// <summary>Connections at a time. A phone uses some six.</summary>
    public const int Most = 1_000;

    private readonly Lock turn = new();
    private readonly HashSet<Caller> all = [];

    /// <summary>Wraps every connection from its first moment, before encryption and before its first byte.</summary>
    public ConnectionDelegate Welcome(ConnectionDelegate next) => async connection =>
    {
        Caller caller = new(connection, clock.GetTimestamp());
        connection.Features.Set(caller);
        Caller? silent = null;
        lock (turn)
        {
            all.Add(caller);
            if (all.Count > Most) silent = all.Where(one => one.Answering == 0).MinBy(one => one.SilentSince);
            if (silent is not null) all.Remove(silent);
        }

        silent?.Connection.Abort(new ConnectionAbortedException("silent for longest while many want to speak"));
        try
        {
            await next(connection);
        }
        finally
        {
            lock (turn) all.Remove(caller);
        }
    };

    /// <summary>Notes while a request of a connection is answered.</summary>
    public async Task Answer(HttpContext context, RequestDelegate next)
    {
        var caller = context.Features.Get<Caller>();
        Note(caller, 1);
        try
        {
            await next(context);
        }
        finally
        {
            Note(caller, -1);
        }
    }

    private void Note(Caller? caller, int change)
    {
        if (caller is null) return;
        lock (turn)
        {
            caller.Answering += change;
            caller.SilentSince = clock.GetTimestamp();
        }
    }

    private sealed class Caller(ConnectionContext connection, long now)
    {
        public ConnectionContext Connection { get; } = connection;

        /// <summary>Requests of it that are being answered; several at once with HTTP/2.</summary>
        public int Answering { get; set; }

        public long SilentSince { get; set; } = now;
    }
}
