using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Finishes a level floor: straight passes along x, to and fro, then once along the walls, over the ends of the passes. Passes go from the longest
/// to one side, then from there to the other, so that only the first goes down into wood.</summary>
internal sealed class FloorPasses
{
    /// <summary>A pass shorter than this is too short to ramp down on, mm: what it would take, the way along the walls does.</summary>
    private const double ShortestRamp = 2;
    /// <summary>How far beyond a spacing a link may cut into the skin, mm.</summary>
    private const double LinkSlack = 0.5;

    private readonly record struct Pass(Point2 A, Point2 B)
    {
        public double Length => A.DistanceTo(B);
        public Point2 Nearest(Point2 p) => new(Math.Clamp(p.X, A.X, B.X), A.Y);
    }

    private readonly CutSettings s;
    private readonly PathBuilder path;
    private readonly Region inside;
    private readonly double top, floor, reach;
    private readonly List<Pass> done = [];

    private FloorPasses(CutSettings s, PathBuilder path, Region inside, double top, double floor, double spacing) =>
        (this.s, this.path, this.inside, this.top, this.floor, reach) = (s, path, inside, top, floor, spacing + LinkSlack);

    /// <summary>Covers the floor up to the walls' leave.</summary>
    /// <param name="s">Settings.</param>
    /// <param name="room">The finished room.</param>
    /// <param name="top">Height of the skin on its floor.</param>
    /// <param name="floor">Height of the floor.</param>
    /// <param name="spacing">Greatest distance between passes, mm.</param>
    /// <param name="wallLeave">Room kept from the walls, mm.</param>
    public static ImmutableArray<Motion> Path(CutSettings s, Region room, double top, double floor, double spacing, double wallLeave)
    {
        if (!(spacing > 0)) throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "Passes need room between them, mm.");
        var path = new PathBuilder(s);
        foreach (var inside in Offsets.Of(room, -s.Cutter.Radius - wallLeave))
        {
            var one = new FloorPasses(s, path, inside, top, floor, spacing);
            foreach (var pass in FromTheLongest([.. Passes(inside, spacing)])) one.Cut(pass);
            foreach (var loop in inside.Loops) one.Cut(new PathLine(loop));
        }
        return path.Build();
    }

    /// <summary>Between the way along the lowest wall and that along the highest; at least one.</summary>
    private static IEnumerable<Pass> Passes(Region inside, double spacing)
    {
        var (low, high) = (inside.Bounds.Y0, inside.Bounds.Y1);
        var n = Math.Max(2, (int)Math.Ceiling((high - low) / spacing));
        var crossings = new List<double>();
        for (var i = 1; i < n; i++)
        {
            var y = low + (high - low) * i / n;
            inside.Crossings(y, crossings);
            for (var k = 0; k + 1 < crossings.Count; k += 2) yield return new(new(crossings[k], y), new(crossings[k + 1], y));
        }
    }

    private static IEnumerable<Pass> FromTheLongest(List<Pass> passes)
    {
        if (passes.Count == 0) return [];
        var longest = passes.IndexOf(passes.MaxBy(p => p.Length));
        return passes.Skip(longest).Concat(passes.Take(longest).Reverse());
    }

    private void Cut(Pass pass)
    {
        if (done.Count > 0 && Ahead(pass) is var (from, to))
        {
            path.Line(from, floor);
            path.Line(to, floor);
        }
        else if (FromCut(pass) is var (cut, near, far))
        {
            path.EnterAbove(cut, top);
            path.Line(cut, floor);
            path.Line(near, floor);
            path.Line(far, floor);
        }
        else if (pass.Length >= ShortestRamp)
        {
            path.EnterAbove(pass.A, top);
            new RampedRun(path, s, [new(pass.A.X, pass.A.Y, floor), new(pass.B.X, pass.B.Y, floor)], top).Cut();
        }
        else return;
        done.Add(pass);
    }

    /// <summary>Once round, from a place nearest to what is cut.</summary>
    private void Cut(PathLine wall)
    {
        var starts = wall.Stations(0, wall.Length).SelectMany(station => done.Select(pass => (Cut: pass.Nearest(wall.At(station)), Station: station)));
        foreach (var (from, start) in starts.OrderBy(w => w.Cut.DistanceTo(wall.At(w.Station))).Where(w => StraightWay.StaysInside(inside, w.Cut, wall.At(w.Station))).Take(1))
            Round(wall, from, start);
    }

    private void Round(PathLine wall, Point2 from, double start)
    {
        path.EnterAbove(from, top);
        path.Line(from, floor);
        path.Line(wall.At(start), floor);
        path.Follow(wall, start, start + wall.Length, floor);
    }

    /// <summary>The pass from its nearer end, where the cutter may go straight on to it.</summary>
    private (Point2 From, Point2 To)? Ahead(Pass pass)
    {
        var at = path.At.Plan;
        var (from, to) = at.DistanceTo(pass.A) <= at.DistanceTo(pass.B) ? (pass.A, pass.B) : (pass.B, pass.A);
        // An end that lies farther on than the pass before went is still reached along the wall.
        return at.DistanceTo(from) <= 2 * reach && StraightWay.StaysInside(inside, at, from) ? (from, to) : null;
    }

    /// <summary>A place on a pass already cut from which one end of this one is near.</summary>
    private (Point2 Cut, Point2 Near, Point2 Far)? FromCut(Pass pass)
    {
        foreach (var beside in done)
            foreach (var (near, far) in ((Point2, Point2)[])[(pass.A, pass.B), (pass.B, pass.A)])
                if (beside.Nearest(near) is var cut && cut.DistanceTo(near) <= reach && StraightWay.StaysInside(inside, cut, near)) return (cut, near, far);
        return null;
    }
}
