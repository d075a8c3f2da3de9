using CsCheck;
using Solidbody.Geometry;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Tests;

/// <summary>The fast sweep against a plain one that tries places along the path.</summary>
public sealed class SweepTests
{
    private static readonly Gen<Cutter> AnyCutter = Gen.OneOf(
        Gen.Double[1, 6].Select(d => Cutters.Flat(d)),
        Gen.Double[1, 6].Select(d => Cutters.Ball(d)),
        Gen.Select(Gen.Double[0.3, 1], Gen.Double[5, 20], (r, a) => Cutters.Tapered(r, a, 6)),
        Gen.Select(Gen.Double[1, 6], Gen.Double[60, 140], (d, a) => Cutters.Drill(d, a)),
        Gen.Select(Gen.Double[0.5, 2], Gen.Double[0.5, 3], (t, e) => Cutters.Roundover(t, e)));

    /// <summary>Paths of short and long, level, sloping, steep and plunging moves, with gentle bends and sharp corners.</summary>
    private static readonly Gen<WorkPoint[]> AnyPath = Gen.Select(
            Gen.Double[-8, 8], Gen.Double[-8, 8], Gen.Double[-3, 0],
            Gen.Select(Gen.Int[0, 5], Gen.Double[0.05, 6], Gen.Double[-1, 1], Gen.Double[-1, 1], (kind, l, a, b) => (kind, l, a, b)).Array[1, 8])
        .Select((x, y, z, steps) =>
        {
            var points = new List<WorkPoint> { new(x, y, z) };
            var heading = 6 * steps[0].a;
            foreach (var (kind, l, a, b) in steps)
            {
                heading += kind switch { 0 => 3 * a, 1 => 0, _ => 0.05 * a };
                var rise = kind switch { 2 => 0, 3 => 0.2 * b * l, 4 => 3 * b * l, _ => 0.02 * b * l };
                var last = points[^1];
                points.Add(kind == 5
                    ? new(last.X, last.Y, last.Z - 2 * Math.Abs(b))
                    : new(last.X + l * Math.Cos(heading), last.Y + l * Math.Sin(heading), last.Z + rise));
            }
            return points.ToArray();
        });

    [Fact]
    public void Columns_are_cut_as_a_plain_search_along_the_path_cuts_them() =>
        Gen.Select(AnyCutter, AnyPath).Sample((cutter, path) =>
        {
            var grid = new Grid(-20.03, -20.01, 0.37, 109, 108);
            var segments = Sweeps.Segments(cutter, path);
            var heights = Sweeps.Cut(grid, segments, CutterProfile.Of(cutter));
            for (var row = 0; row < grid.Rows; row += 3)
                for (var column = 0; column < grid.Columns; column += 2)
                {
                    var p = grid.Centre(column, row);
                    if (Sweeps.NearRim(cutter, path, p)) continue;
                    var expected = Math.Min(Sweeps.Uncut, Sweeps.PlainHeight(cutter, path, p));
                    var got = heights[row * (grid.Columns + 31) + column];
                    if (!(Math.Abs(expected - got) < Sweeps.Tolerance(cutter)))
                        Assert.Fail($"{cutter.Kind} d {cutter.Diameter} at {p}: plain {expected}, kernel {got}; path {string.Join(" ", path)}");
                }
        }, iter: 200);

    [Fact]
    public void The_statement_in_double_precision_agrees_with_the_plain_search() =>
        Gen.Select(AnyCutter, AnyPath, Gen.Double[-10, 10], Gen.Double[-10, 10]).Sample((cutter, path, x, y) =>
        {
            var p = new Point2(path[0].X + x, path[0].Y + y);
            if (Sweeps.NearRim(cutter, path, p)) return;
            var profile = CutterProfile.Of(cutter);
            var stated = Sweeps.Segments(cutter, path).Min(s => SweptHeight.At(s, profile, p.X, p.Y));
            var plain = Sweeps.PlainHeight(cutter, path, p);
            if (stated != plain && !(Math.Abs(stated - plain) < Sweeps.Tolerance(cutter)))
                Assert.Fail($"{cutter.Kind} at {p}: {stated} against {plain}");
        }, iter: 3_000);

    [Fact]
    public void Profiles_are_the_cutters_own_surfaces() =>
        Gen.Select(AnyCutter, Gen.Double[0, 1]).Sample((cutter, k) =>
            Math.Abs(cutter.Height(k * cutter.Radius) - CutterProfile.Of(cutter).Height(k * cutter.Radius)) < 1e-9);

    /// <summary>A sloping flat cutter touches with its rim: far from the start, where floats are coarse, that must not drop columns (one dropped
    /// is wood that a rapid seems to meet later).</summary>
    [Fact]
    public void A_long_gentle_slope_leaves_no_column_under_a_flat_cutter()
    {
        var grid = new Grid(-5, -5, 0.31, 1000, 33);
        var path = new WorkPoint[] { new(0, 0.013, -1), new(300, 0.017, -0.9) };
        var heights = Sweeps.Cut(grid, Sweeps.Segments(Cutters.Flat(6), path), CutterProfile.Of(Cutters.Flat(6)));
        for (var i = 0; i < grid.Count; i++)
        {
            var (column, row) = (i % grid.Columns, i / grid.Columns);
            var p = grid.Centre(column, row);
            if (p.X is >= 0 and <= 300 && Math.Abs(p.Y - 0.015) < 2.99)
                Assert.True(heights[row * (grid.Columns + 31) + column] < -0.89, $"the column at {p} stands");
        }
    }

    [Fact]
    public void Any_number_of_bands_gives_the_same_bits()
    {
        var cutter = Cutters.Ball(6);
        var path = Enumerable.Range(0, 400).Select(i => new WorkPoint(20 * Math.Cos(i * 0.1), 20 * Math.Sin(i * 0.13), -5 + 2 * Math.Sin(i * 0.3))).ToArray();
        var grid = new Grid(-30, -30, 0.31, 194, 194);
        var segments = Sweeps.Segments(cutter, path);
        var whole = Sweeps.Cut(grid, segments, CutterProfile.Of(cutter));
        var banded = Sweeps.Cut(grid, segments, CutterProfile.Of(cutter), bandRows: 7);
        Assert.Equal(whole, banded);
    }
}
