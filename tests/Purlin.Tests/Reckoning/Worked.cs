using System.Text.Json.Nodes;
using Purlin.Journal;
using Purlin.Reckoning;

namespace Purlin.Tests.Reckoning;

/// <summary>A reckoning run as the command line runs it: JSON in, working out.</summary>
internal static class Worked
{
    internal static Working Of(string name, string json) => Try(name, json).OrThrow();

    internal static Checked<Working> Try(string name, string json) =>
        Reckonings.ReadInput(json).Match(input => Reckonings.Reckon(name, input), refusals => Checked<Working>.Refused(refusals));

    /// <summary>A quantity of the result, after checking that its unit is the contract's.</summary>
    internal static double Value(this Working working, string member, string unit)
    {
        var quantity = Assert.IsType<JsonObject>(working.Result[member], exactMatch: false);
        Assert.Equal(unit, (string?)quantity["unit"]);
        return (double)quantity["value"]!;
    }

    /// <summary>The one refusal, checked for the input it names.</summary>
    internal static Refusal Refused(string name, string json, string input)
    {
        var tried = Try(name, json);
        Assert.False(tried.IsAccepted, $"{name} took {json}");
        return Assert.Single(tried.Refusals, refusal => refusal.Input == input);
    }

    internal static void Near(double expected, double got, double tolerance) =>
        Assert.True(Math.Abs(expected - got) <= tolerance, $"expected {expected} ± {tolerance}, got {got:R}");
}
