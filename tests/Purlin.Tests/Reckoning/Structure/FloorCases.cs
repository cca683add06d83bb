using System.Text.Json.Nodes;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>Floors whose tilt and bend are known exactly, and how they are turned into input.</summary>
internal static class FloorCases
{
    public static IEnumerable<(double X, double Y, double Z)> Grid(double[] xs, double[] ys, Func<double, double, double> level) =>
        ys.SelectMany(y => xs.Select(x => (x, y, level(x, y))));

    public static JsonObject Input(IEnumerable<(double X, double Y, double Z)> points, string more = "{}")
    {
        var input = JsonNode.Parse(more)!.AsObject();
        input["points"] = new JsonArray([.. points.Select(point => (JsonNode)new JsonObject { ["x"] = point.X, ["y"] = point.Y, ["reading"] = point.Z })]);
        return input;
    }

    public static Reckoned Survey(IEnumerable<(double X, double Y, double Z)> points, string more = "{}") => Reckoned.Of("floor-survey", Input(points, more));

    /// <summary>A profile carried unchanged across three rows ten feet apart, since one line alone has no plane.</summary>
    public static IEnumerable<(double X, double Y, double Z)> Strip(params (double X, double Z)[] profile) =>
        new[] { 0.0, 10, 20 }.SelectMany(y => profile.Select(point => (point.X, y, point.Z)));

    public static double[] Steps(double step, int count) => [.. Enumerable.Range(0, count).Select(index => index * step)];
}
