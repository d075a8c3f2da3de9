using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Finishes a curved surface with parallel passes of a ball-end, tapered ball-end or flat cutter.</summary>
public static class SurfaceRaster
{
    /// <summary>Links between passes longer than this many spacings go over clearance.</summary>
    private const double LongestLinkBySpacing = 4;

    /// <summary>Carves the surface inside a zone; nothing outside of the zone carries the cutter.</summary>
    /// <param name="s">A flat cutter's spacing is StepOver; a ball's follows from <paramref name="scallop"/>.</param>
    /// <param name="surface">Closed form, laid frame.</param>
    /// <param name="zone">Where the surface is to be made.</param>
    /// <param name="direction">Which way the passes run.</param>
    /// <param name="scallop">Greatest ridge between passes, mm, on cross slopes up to 80°.</param>
    /// <param name="lowest">The tip never goes below, laid frame.</param>
    /// <param name="skip">Already made, inside the zone: passes break there, 1 mm in. Null for nothing.</param>
    /// <returns>Motions; zigzag, linked at the surface where neighbouring ends are near.</returns>
    /// <remarks>Accuracy: points within 0.002 mm of the closed form, chords within 0.005 mm. First descents are at plunge feed from clearance: how much wood roughing left is not known here.</remarks>
    public static ImmutableArray<Motion> Path(CutSettings s, IHeight surface, Region zone, RasterDirection direction, double scallop, double lowest, Region? skip)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(zone);
        var across = direction == RasterDirection.Across;
        Point2 Laid(double x, double y) => across ? new(y, x) : new(x, y);
        if (across)
        {
            (surface, zone) = (new ExchangedHeight(surface), Exchanged(zone));
            skip = skip is null ? null : Exchanged(skip);
        }

        var contact = new ZoneContact(surface, zone, s.Cutter);
        var ball = s.Cutter.Kind == CutterKind.TaperedBallEnd ? s.Cutter.TipRadius : s.Cutter.IsFlat ? 0 : s.Cutter.Radius;
        var spacing = ball > 0 ? Scallop.Spacing(ball, scallop) : s.StepOver;
        var pass = new RasterPass(contact, zone, skip, lowest, s.Cutter.Radius);
        var ys = RasterSpacing.Passes(contact.Field, zone.Bounds, spacing, ball);
        var rows = new List<List<(double X, double Z)>>[ys.Count];
        Parallel.For(0, ys.Count, i => rows[i] = pass.Runs(ys[i]));
        // Half a spacing: past the edge there is no neighbour on the other side to share the ridge with.
        (double Y, List<List<(double X, double Z)>> Runs)[] passes = [.. Beyond(pass, ys[0], -EndSpacing(ys, 0) / 2, s.Cutter.Radius).Reverse(),
            .. ys.Zip(rows), .. Beyond(pass, ys[^1], EndSpacing(ys, ys.Count - 2) / 2, s.Cutter.Radius)];
        var all = new (double Y, List<List<(double X, double Z)>> Runs)[passes.Length];
        Parallel.For(0, passes.Length, i => all[i] = (passes[i].Y, [.. passes[i].Runs.Select(run =>
            pass.AlongTheEdge(run, passes[i].Y, Neighbours(passes, i).Where(n => n[^1].X > run[0].X && n[0].X < run[^1].X)))]));

        var path = new PathBuilder(s);
        var (ahead, begun) = (true, false);
        foreach (var (y, runs) in all)
        {
            foreach (var run in ahead ? runs : runs.AsEnumerable().Reverse())
            {
                var points = ahead ? run : run.AsEnumerable().Reverse();
                var (x, z) = points.First();
                if (!begun || !Link(path, pass, Laid, x, y, z, LongestLinkBySpacing * spacing))
                {
                    path.EnterAbove(Laid(x, y), s.Clearance - s.Approach);
                    begun = true;
                }
                foreach (var (px, pz) in points) path.Line(Laid(px, y), pz);
            }
            if (runs.Count > 0) ahead = !ahead;
        }
        return path.Build();
    }

    private static IEnumerable<List<(double X, double Z)>> Neighbours((double Y, List<List<(double X, double Z)>> Runs)[] passes, int i) =>
        (i > 0 ? passes[i - 1].Runs : []).Concat(i + 1 < passes.Length ? passes[i + 1].Runs : []);

    /// <summary>Spacing at an end: a full one, since the zone's last pass may lie closer than that to the one before.</summary>
    private static double EndSpacing(List<double> ys, int i) => ys.Count < 2 ? 1 : Math.Max(ys[Math.Min(i + 1, ys.Count - 1)] - ys[Math.Max(0, i)], i > 0 ? ys[i] - ys[i - 1] : 0);

    /// <summary>Passes past the zone's edge, for as long as its inside carries the cutter there.</summary>
    private static IEnumerable<(double Y, List<List<(double X, double Z)>> Runs)> Beyond(RasterPass pass, double from, double spacing, double reach)
    {
        for (var y = from + spacing; Math.Abs(y - from) <= reach; y += spacing)
        {
            var runs = pass.Runs(y);
            if (runs.Count == 0) yield break;
            yield return (y, runs);
        }
    }

    /// <summary>Straight on to the next pass along the surface, when it is near. False when it is not.</summary>
    private static bool Link(PathBuilder path, RasterPass pass, Func<double, double, Point2> laid, double x, double y, double z, double longest)
    {
        var from = path.At;
        var to = laid(x, y);
        var length = from.Plan.DistanceTo(to);
        if (length > longest) return false;
        var start = laid(from.X, from.Y);   // the exchange undoes itself
        foreach (var (at, height) in pass.Between((start, from.Z), (new(x, y), z))) path.Line(laid(at.X, at.Y), height);
        path.Line(to, z);
        return true;
    }

    private static Region Exchanged(Region region) => new(region.Loops.Select(l => l.Map(p => new(p.Y, p.X)).Reversed));
}
