using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Toolpaths;
using Solidbody.Shop;

namespace Solidbody.Machining.Timing.Least;

/// <summary>The time at feed that wood or surface asks for, seconds, with one cutter and its feeds.</summary>
internal sealed class LeastCut(Cutter cutter, CutFeeds feeds, Machine machine)
{
    /// <summary>Side of the squares over which heights are added up, mm.</summary>
    private const double Square = 2;

    /// <summary>Bites no deeper than the step-down that a depth takes.</summary>
    private int Levels(double depth) => Math.Max(1, (int)Math.Ceiling(depth / feeds.StepDown - 1e-9));

    /// <summary>A line of a length, once for every bite.</summary>
    public double Along(double length, double depth) => Levels(depth) * length / feeds.Feed;

    public double Drilled(RoundHole hole) => (hole.Mouth - hole.Bottom) / feeds.PlungeFeed;

    /// <summary>The quicker of a helix down with a level turn at its end, and plunges with a turn at every level; a wide hole takes no less than its floor, bite by bite.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="pecks">What plunging to its floor takes at rapid, seconds.</param>
    public double Bored(RoundHole hole, double pecks)
    {
        var (depth, radius) = (hole.Mouth - hole.Bottom, Math.Max(0, hole.Diameter - cutter.Diameter) / 2);
        // Chords are not held to an arc's speed.
        var along = machine.Arcs ? Math.Min(feeds.Feed, Math.Sqrt(machine.AccelerationXY * radius)) : feeds.Feed;
        var turn = radius > Tolerances.Output ? 2 * Math.PI * radius / along : 0;
        var helix = radius > Tolerances.Output ? depth / (along * Math.Sin(CutSettings.RampOf(cutter))) + turn : double.PositiveInfinity;
        var plunged = cutter.Plunges ? depth / feeds.PlungeFeed + pecks + Levels(depth) * turn : double.PositiveInfinity;
        var floor = Levels(depth) * Math.Max(0, hole.Diameter * hole.Diameter - cutter.Diameter * cutter.Diameter) * Math.PI / 4 / (cutter.Diameter * feeds.Feed);
        return radius <= HelicalBoring.EntryByRadius * cutter.Radius ? Math.Min(helix, plunged) : floor;
    }

    /// <summary>A room's floor for every bite: along a path a disc sweeps no more than its width times the way, and itself once where it comes down.</summary>
    /// <param name="region">The room.</param>
    /// <param name="inset">How far inside of it the axis stays, mm.</param>
    /// <param name="depth">Of all bites, mm.</param>
    public double Swept(Region region, double inset, double depth) => Levels(depth) * Offsets.Of(region, -inset)
        .Sum(axis => Math.Max(0, Offsets.Of(axis, cutter.Radius).Sum(r => r.Area) - Math.PI * cutter.Radius * cutter.Radius)) / (cutter.Diameter * feeds.Feed);

    /// <summary>The same where no more than an angle of the rim may stand in wood: beyond the room a helix opens, a disc then sweeps r·(1 − cos φ) of new floor a millimetre.</summary>
    /// <param name="angle">φ, radians; at most a half turn.</param>
    public double SweptNarrowly(Region region, double inset, double depth, double angle)
    {
        var opened = (1 + HelicalBoring.EntryByRadius) * cutter.Radius;
        var fresh = Offsets.Of(region, -inset).Sum(axis => Math.Max(0, Offsets.Of(axis, cutter.Radius).Sum(r => r.Area) - Math.PI * opened * opened));
        return Math.Max(Swept(region, inset, depth), Levels(depth) * fresh / (Engagement.Width(Math.Min(angle, Math.PI), cutter.Diameter) * feeds.Feed));
    }

    /// <summary>Along an edge for every bite of a cutter of its form.</summary>
    public double Formed(Work.FormEdge work) =>
        EdgeForming.PlaceOf(cutter, work.Form) is { } place && EdgeForming.LineOf(work.Path, work.Closed, place) is { } line ? Along(line.Length, place.Down) : 0;

    /// <summary>Along an edge for every pass of a ball that its ridges ask for.</summary>
    public double Followed(Work.FollowEdge work) => work.Stretches
        .SelectMany(stretch => new EdgeContacts(stretch.Divided(), work.Form, work.Face).Tips(cutter, work.Scallop))
        .Sum(pass => pass.Zip(pass.Skip(1), (a, b) => a.DistanceTo(b)).Sum()) / feeds.Feed;

    /// <summary>Round the outline for every bite, less what tabs may spare.</summary>
    public double Round(Loop loop, double leave, double top, double bottom, ImmutableArray<Bridge> bridges)
    {
        var length = Offsets.Of(new Region(loop), cutter.Radius + leave).Sum(r => r.Loops.Sum(l => l.Perimeter));
        return DepthLevels.Of(top, bottom, feeds.StepDown)
            .Sum(z => Math.Max(0, length - bridges.Where(b => b.Top > z).Sum(b => b.Length + 2 * cutter.Diameter))) / feeds.Feed;
    }

    /// <summary>The wood over the heights where the cutter rests, over the greatest bite times feed.</summary>
    public double Roughed(Work.RoughFace work)
    {
        var field = new SurfaceField(work.Face, work.Zone.Bounds.Grown(cutter.Radius + Square), Square / 2);
        var form = CutterForm.Of(cutter).Wider(Square / Math.Sqrt(8));
        var wood = 0.0;
        foreach (var p in Squares(work.Zone))
            wood += Math.Max(0, work.Top - Math.Max(work.Lowest, field.Rest(p.X, p.Y, form).Height + work.Leave));
        return wood * Square * Square / (cutter.Diameter * feeds.StepDown * feeds.Feed);
    }

    /// <summary>The surface, over the widest spacing that keeps the ridges, at feed.</summary>
    public double Surfaced(Work.FinishFace work)
    {
        var ball = cutter.Kind == CutterKind.TaperedBallEnd ? cutter.TipRadius : cutter.IsFlat ? 0 : cutter.Radius;
        var spacing = ball > 0 ? Scallop.Spacing(ball, work.Scallop) : cutter.Diameter;
        var factor = 0.0;
        foreach (var p in Squares(work.Zone))
            if (work.Skip?.Contains(p) != true) factor += ball > 0 ? PassShare(work.Face, p, work.Along ? new(1, 0) : new(0, 1), ball) : 1;
        return factor * Square * Square / (spacing * feeds.Feed);
    }

    /// <summary>Length of passes over a piece of the plan, by its area over the spacing on a flat face.</summary>
    /// <remarks>
    /// Along the pass a face that rises by g is √(1 + g²) long; round a hollow of curvature k the tip goes only 1 − kR of that.
    /// Across it, ridges h ≈ s²(1/R + κ)/8 high lie s apart on the face, κ its curvature there, positive where it is rounded outward:
    /// √(1 + g²)·√(1 + κR) passes on a length in the plan.
    /// </remarks>
    private static double PassShare(IHeight face, Point2 p, Point2 along, double ball)
    {
        var (rise, bend) = Reading(face, p, along);
        var (lean, curve) = Reading(face, p, along.Left);
        return Math.Sqrt(1 + rise * rise) * Math.Clamp(1 + bend * ball, 0, 1) * Math.Sqrt((1 + lean * lean) * Math.Max(0, 1 + curve * ball));
    }

    /// <summary>Slope of a face along a direction, and its curvature, positive where it is rounded outward.</summary>
    private static (double Slope, double Curvature) Reading(IHeight face, Point2 p, Point2 along)
    {
        const double step = 0.6;
        var (before, here, after) = (face.Z(p.X - step * along.X, p.Y - step * along.Y), face.Z(p.X, p.Y), face.Z(p.X + step * along.X, p.Y + step * along.Y));
        var slope = (after - before) / (2 * step);
        return (slope, -(after + before - 2 * here) / (step * step) / Math.Pow(1 + slope * slope, 1.5));
    }

    /// <summary>Middles of squares that lie in a zone.</summary>
    private static IEnumerable<Point2> Squares(Region zone)
    {
        var grid = Grid.Over(zone.Bounds, Square);
        var crossings = new List<double>();
        for (var row = 0; row < grid.Rows; row++)
        {
            zone.Crossings(grid.Y(row), crossings);
            for (var k = 0; k + 1 < crossings.Count; k += 2)
                for (var c = Math.Max(0, (int)Math.Ceiling((crossings[k] - grid.X0) / Square - 0.5)); c < grid.Columns && grid.X(c) <= crossings[k + 1]; c++)
                    yield return grid.Centre(c, row);
        }
    }
}
