using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using MathNet.Numerics.LinearAlgebra;
using Purlin.Reckoning;

namespace Purlin.Bench;

/// <summary>
/// Every reckoning on the input of its documented example; a floor survey of 500 points beside the library's least squares; the costs of 60
/// components over 30 years beside a plain simulation.
/// </summary>
internal static partial class ReckoningBench
{
    public static void Run(Results results)
    {
        foreach (var (name, input) in Examples())
        {
            const int Times = 100;
            results.Alone($"{name}, {Times} times", () =>
            {
                for (var time = 0; time < Times; time++) Reckonings.Reckon(name, input).OrThrow();
            }, runs: 5);
        }
        Survey(results);
        Costs(results);
    }

    private static IEnumerable<(string Name, JsonObject Input)> Examples()
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var page in Directory.EnumerateFiles("docs/reckonings", "*.md").Order(StringComparer.Ordinal))
        {
            foreach (Match block in Block().Matches(File.ReadAllText(page)))
            {
                var name = block.Groups["name"].Value;
                if (seen.Add(name)) yield return (name, JsonNode.Parse(block.Groups["input"].Value)!.AsObject());
            }
        }
    }

    private static void Survey(Results results)
    {
        const int Across = 25, Down = 20;
        List<(double X, double Y, double Level)> points = [.. from y in Enumerable.Range(0, Down) from x in Enumerable.Range(0,
            Across) select (x * 2.0, y * 2.0, 0.02 * x - 0.01 * y + 0.3 * Math.Sin(x * 0.3) * Math.Cos(y * 0.4))];
        JsonObject input = new()
        {
            ["points"] = new JsonArray([.. points.Select(point => (JsonNode)new JsonObject { ["x"] = point.X,
            ["y"] = point.Y, ["reading"] = point.Level })])
        };
        var matrix = Matrix<double>.Build.DenseOfRows(points.Select(point => new[] { point.X, point.Y, 1 }));
        var levels = Vector<double>.Build.DenseOfEnumerable(points.Select(point => point.Level));
        results.Pair("floor-survey of 500 points, with every line and contour", () => Reckonings.Reckon("floor-survey", input).OrThrow(),
            "the plane alone by MathNet (QR)", () => matrix.QR().Solve(levels), runs: 5);
    }

    private static void Costs(Results results)
    {
        JsonArray components = [.. Enumerable.Range(0, 60)
            .Select(index => (JsonNode)new JsonObject { ["component"] = Kinds[index % Kinds.Length], ["year_installed"] = 1990
            + index % 30, ["price"] = 800 + 50 * index })];
        JsonObject input = new() { ["components"] = components, ["years"] = 30, ["year_now"] = 2026 };
        results.Pair("cost-horizon, 60 components over 30 years, exact", () => Reckonings.Reckon("cost-horizon", input).OrThrow(),
            "10,000 simulated histories of as many coin tosses", Tosses, runs: 3);
    }

    private static readonly string[] Kinds = ["furnace-gas", "furnace-electric", "furnace-oil"];

    private static void Tosses()
    {
        Random chance = new(7);
        double sum = 0;
        for (var history = 0; history < 10_000; history++)
            for (var component = 0; component < 60; component++)
                for (var year = 0; year < 30; year++)
                    if (chance.NextDouble() < 0.05) sum += 1000;
        GC.KeepAlive(sum);
    }

    [GeneratedRegex("```reckon\n(?<name>[a-z-]+)\n(?<input>\\{.*?\\})\n", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Block();
}
