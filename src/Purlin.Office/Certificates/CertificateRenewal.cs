using System.Security.Cryptography;

namespace Purlin.Office.Certificates;

/// <summary>
/// Gets the certificate at first start and a new one when two thirds of its life are over. After a failure it waits longer and longer, from a minute to a day,
/// and at least as long as the authority asks; what failed is said each time in a sentence.
/// </summary>
internal sealed class CertificateRenewal(OfficeOptions office, KeptCertificate kept, ChallengeAnswers answers, ILogger<CertificateRenewal> log) : BackgroundService
{
    private static readonly TimeSpan First = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Longest = TimeSpan.FromDays(1);

    /// <summary>How long to wait after so many failures in a row.</summary>
    public static TimeSpan Pause(int failures, TimeSpan? asked)
    {
        var own = failures > 11 ? Longest : TimeSpan.FromTicks(Math.Min(Longest.Ticks, First.Ticks << (failures - 1)));
        return asked is { } wait && wait > own ? wait : own;
    }

    /// <summary>When the next one is due.</summary>
    public static DateTimeOffset Due((DateTimeOffset From, DateTimeOffset Until) life) => life.From + ((life.Until - life.From) * 2 / 3);

    /// <summary>Orders one now.</summary>
    /// <exception cref="AcmeRefusal">The authority gave none.</exception>
    public async Task Once(CancellationToken cancel)
    {
        var options = office.Certificate!;
        using HttpClient http = new(options.Connect()) { Timeout = TimeSpan.FromSeconds(30) };
        http.DefaultRequestHeaders.UserAgent.ParseAdd("purlin");
        using var account = kept.AccountKey();
        AcmeAccount authority = new(http, account, options.Name);
        await authority.Open(options.Directory, cancel);
        // A key of its own for each certificate: one that leaked is of no use after the next.
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        kept.Keep(await AcmeOrder.Run(authority, options.Name, key, answers, cancel), key);
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // The authority's question comes to this office: it must be listening first.
        await Task.Delay(TimeSpan.FromMilliseconds(500), stoppingToken);
        try
        {
            for (var failures = 0; ;)
            {
                if (kept.Life is { } life && office.Clock.GetUtcNow() < Due(life))
                {
                    await Task.Delay(Part(Due(life) - office.Clock.GetUtcNow()), office.Clock, stoppingToken);
                    continue;
                }

                var wait = await Try(failures + 1, stoppingToken);
                failures = wait is null ? 0 : failures + 1;
                if (wait is { } pause) await Task.Delay(pause, office.Clock, stoppingToken);
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The office is closing.
        }
    }

    /// <summary>Looked at once a day, so that a clock that was put right does not put a renewal off.</summary>
    private static TimeSpan Part(TimeSpan wait) => wait < Longest ? wait : Longest;

    private async Task<TimeSpan?> Try(int attempt, CancellationToken cancel)
    {
        try
        {
            await Once(cancel);
            office.Say($"There is a certificate for {office.Certificate!.Name}, good until {kept.Life!.Value.Until:yyyy-MM-dd}.");
            return null;
        }
        catch (Exception failure) when (failure is AcmeRefusal or HttpRequestException or IOException or System.Text.Json.JsonException or System.Security.Cryptography.CryptographicException || (failure is TaskCanceledException && !cancel.IsCancellationRequested))
        {
            var pause = Pause(attempt, (failure as AcmeRefusal)?.Wait);
            var words = failure is AcmeRefusal ? failure.Message : $"The certificate authority could not be reached ({failure.Message}).";
            var until = kept.Life is { } life ? $" The present certificate is good until {life.Until:yyyy-MM-dd}." : " Until then no phone can open the office.";
            log.LogError("{Words} It is tried again in {Minutes} minutes.{Until}", words, Math.Ceiling(pause.TotalMinutes), until);
            return pause;
        }
    }
}
