using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using static Purlin.Tests.Reckoning.Structure.FloorCases;

namespace Purlin.Tests.Reckoning.Structure;

/// <summary>The plane against an independent solution, and what must hold for any floor whatever its readings.</summary>
public sealed class FloorPlaneProperties
{
    // Smooth floors on a grid that is not square, with the scatter of a tape and a level: no reading is stray.
    private static readonly Gen<(double X, double Y, double Z)[]> Floors =
        Gen.Select(Gen.Int[3, 6], Gen.Int[3, 6], Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], Gen.Double[-0.002, 0.002], Gen.Double[-0.05, 0.05].Array[36])
            .Select((nx, ny, a, b, bow, noise) => Grid(Steps(7, nx), Steps(9, ny), (x, y) => a * x + b * y + bow * (x - 10) * (x - 10))
                .Select((point, index) => (point.X, point.Y, point.Z + noise[index])).ToArray());

    // MathNet.Numerics, QR of [x y 1]: an implementation of least squares that shares nothing with ours.
    [Fact]
    public void The_plane_is_the_one_an_independent_solver_finds() => Floors.Sample(points =>
    {
        var floor = Survey(points);
        if (!floor.IsNull("stray")) return true;
        var solved = Matrix<double>.Build.DenseOfRows(points.Select(point => new[] { point.X, point.Y, 1 })).QR().Solve(Vector<double>.Build.DenseOfEnumerable(points.Select(point => point.Z)));
        return Math.Abs(floor.Number("plane.a") - solved[0]) < 1e-9 && Math.Abs(floor.Number("plane.b") - solved[1]) < 1e-9 && Math.Abs(floor.Number("plane.c") - solved[2]) < 1e-8;
    }, iter: 80);

    [Fact]
    public void Moving_and_turning_the_plan_changes_neither_tilt_nor_bend() =>
        Gen.Select(Floors, Gen.Double[-Math.PI, Math.PI], Gen.Double[-300, 300], Gen.Double[-300, 300], Gen.Double[-20, 20]).Sample((points, turn, dx, dy, dz) =>
        {
            var (sin, cos) = Math.SinCos(turn);
            var (here, there) = (Survey(points), Survey(points.Select(point => (cos * point.X - sin * point.Y + dx, sin * point.X + cos * point.Y + dy, point.Z + dz))));
            foreach (var path in new[] { "tilt", "range", "residual_rms", "residual_max", "pairs_examined", "lines_examined" })
                there.Near(path, here.Number(path), 1e-6 * (1 + Math.Abs(here.Number(path))));
            // Of a floor that bends by less than a millionth of an inch only rounding is left.
            foreach (var path in new[] { "deflection.one_in", "line_deflection.one_in" }.Where(path => Math.Abs(here.Number(path[..path.IndexOf('.', StringComparison.Ordinal)] + ".deflection")) > 1e-6))
                there.Near(path, here.Number(path), 1e-6 * (1 + Math.Abs(here.Number(path))));
            Assert.Equal(here.Verdict, there.Verdict);
        }, iter: 60);

    [Fact]
    public void A_true_plane_bends_nowhere_however_it_leans() =>
        Gen.Select(Gen.Double[-1.9, 1.9], Gen.Double[-1.9, 1.9], Gen.Double[-40, 40].Array[8], Gen.Double[-40, 40].Array[8]).Sample((a, b, xs, ys) =>
        {
            var floor = Survey(Grid([.. xs.Take(4)], [.. ys.Take(4)], (x, y) => a * x + b * y + 3).Take(12).Append((60, 60, a * 60 + b * 60 + 3)).Append((-60, 60, -a * 60 + b * 60 + 3)), """{"alignment":2}""");
            floor.Near("tilt", 100 * Math.Sqrt(a * a + b * b) / 12, 1e-6);
            if (!floor.IsNull("deflection")) floor.Near("deflection.deflection", 0, 1e-6);
        }, iter: 80);

    [Fact]
    public void The_same_floor_in_metres_and_millimetres_gives_the_same_answer() => Floors.Sample(points =>
    {
        var metric = Input(points);
        foreach (var point in metric["points"]!.AsArray())
        {
            point!["x"] = FormattableString.Invariant($"{point["x"]!.GetValue<double>() * 0.3048:R} m");
            point["y"] = FormattableString.Invariant($"{point["y"]!.GetValue<double>() * 30.48:R} cm");
            point["reading"] = FormattableString.Invariant($"{point["reading"]!.GetValue<double>() * 25.4:R} mm");
        }
        var (feet, metres) = (Survey(points), Reckoned.Of("floor-survey", metric));
        metres.Near("tilt", feet.Number("tilt"), 1e-9);
        if (Math.Abs(feet.Number("deflection.deflection")) > 1e-6) metres.Near("deflection.one_in", feet.Number("deflection.one_in"), 1e-4 * feet.Number("deflection.one_in"));
        Assert.Equal(feet.Verdict, metres.Verdict);
    }, iter: 25);

    // Every pair, every point, no fan and no sorting: the plain way to say it.
    [Fact]
    public void The_sharpest_bend_is_the_one_that_trying_every_triple_finds() => Floors.Sample(points =>
    {
        var floor = Survey(points);
        if (!floor.IsNull("stray")) return;
        var sharpest = 0.0;
        foreach (var a in points)
        {
            foreach (var b in points)
            {
                var length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y));
                foreach (var c in points.Where(c => length > 0 && c != a && c != b && Math.Abs((b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X)) / length < 1e-9))
                {
                    var along = ((c.X - a.X) * (b.X - a.X) + (c.Y - a.Y) * (b.Y - a.Y)) / length;
                    if (along <= 0 || along >= length) continue;
                    var off = Math.Abs(c.Z - a.Z - (b.Z - a.Z) * along / length);
                    if (off > 0.1) sharpest = Math.Max(sharpest, off / (12 * length));
                }
            }
        }
        if (sharpest > 0) floor.Near("deflection.one_in", 1 / sharpest, 1e-6 / sharpest);
        else Assert.False(floor.Flag("deflection.readable"));
    }, iter: 25);
}
