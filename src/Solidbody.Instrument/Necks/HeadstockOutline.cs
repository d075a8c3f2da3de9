using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Necks;

/// <summary>The headstock's outline: one open, curvature-continuous curve from the neck's bass edge at the nut round the tip to its treble edge.</summary>
/// <param name="Curve">In (u, y): u from the nut toward the tip, mm; it starts and ends at u = 0 on the neck's own edges.</param>
/// <param name="Posts">Post of every string, (u, y).</param>
/// <remarks>Our own family: docs/shapes.md. The edge runs parallel to the posts at a stated distance, hollows at the nut and before a small bud.</remarks>
public sealed record HeadstockOutline(BSpline Curve, ImmutableArray<Point2> Posts)
{
    /// <summary>Control points are spread about this far along the edge, mm.</summary>
    private const double EdgeStep = 22;
    /// <summary>A gap between the sides' last posts longer than this takes a second guide point, mm.</summary>
    private const double LongGap = 45;

    /// <param name="nutWidth">Of the neck at u = 0.</param>
    /// <param name="halfWidthGain">Half width of the neck gained per mm toward the heel.</param>
    public static HeadstockOutline Build(HeadstockDefinition h, Strings strings, double nutWidth, double halfWidthGain)
    {
        var posts = TunerPosts.Of(h, strings);
        var far = posts.MaxBy(p => p.X);
        var maker = new Maker(h, strings, posts, nutWidth, halfWidthGain, far);
        var (bass, treble) = (maker.Side(-1), maker.Side(+1));
        ImmutableArray<Point2> controls = [.. bass, .. maker.Tip(bass[^1], treble[^1]), .. treble.AsEnumerable().Reverse()];
        return new(new(controls, Closed: false), posts);
    }

    /// <summary>Where the edge beside a side's first post begins, (u, y): the rules look at it. Null on a side without posts.</summary>
    public static Point2? FirstEdge(HeadstockDefinition h, Strings strings, int side)
    {
        var own = OwnPosts(h, TunerPosts.Of(h, strings), side);
        if (own.IsEmpty) return null;
        var (along, out_) = EdgeFrame(own, strings, side);
        return own[0] + h.EdgeDistance * out_ - h.EdgeLead * along;
    }

    private static ImmutableArray<Point2> OwnPosts(HeadstockDefinition h, ImmutableArray<Point2> posts, int side) =>
        side < 0 ? posts[..h.TunersBass] : [.. posts[h.TunersBass..].Reverse()];

    private static (Point2 Along, Point2 Outward) EdgeFrame(ImmutableArray<Point2> own, Strings strings, int side)
    {
        var along = (own.Length > 1 ? own[^1] - own[0] : new(1, strings.Drift(side < 0 ? 0 : strings.Count - 1))).Unit;
        return (along, side * along.Left);
    }

    private sealed record Maker(HeadstockDefinition H, Strings Strings, ImmutableArray<Point2> Posts, double NutWidth, double Gain, Point2 Far)
    {
        public List<Point2> Side(int side)
        {
            double Edge(double u) => NutWidth / 2 - Gain * u;
            // Collinear and evenly spaced: the curve leaves the neck's edge at u = 0 without a bend.
            List<Point2> points = [new(-H.NeckBlend, side * Edge(-H.NeckBlend)), new(0, side * Edge(0)), new(H.NeckBlend, side * Edge(H.NeckBlend))];
            var own = OwnPosts(H, Posts, side);
            points.AddRange(own.IsEmpty ? FreeSide(side) : PostSide(side, own));
            return points;
        }

        private IEnumerable<Point2> PostSide(int side, ImmutableArray<Point2> own)
        {
            var (along, outward) = EdgeFrame(own, Strings, side);
            var from = own[0] + H.EdgeDistance * outward - H.EdgeLead * along;
            var to = own[^1] + H.EdgeDistance * outward + H.EdgeTrail * along;
            var steps = Math.Max(2, (int)Math.Round(from.DistanceTo(to) / EdgeStep));
            for (var k = 0; k <= steps; k++) yield return from + (double)k / steps * (to - from);
            var gap = Far.X - own[^1].X;
            if (gap <= H.TunerPitch / 2) yield break;
            var guide = new Point2(Far.X, side * Math.Max(side * Far.Y + H.EdgeDistance, 0.6 * side * to.Y));
            var between = gap > LongGap ? 2 : 1;
            for (var k = 1; k <= between; k++) yield return to + (double)k / (between + 1) * (guide - to);
            yield return guide;
        }

        private IEnumerable<Point2> FreeSide(int side)
        {
            var outer = side < 0 ? 0 : Strings.Count - 1;
            var end = Math.Max(side * (Strings.Leave(outer).Y + Strings.Drift(outer) * (Far.X - Strings.Leave(outer).X)) + H.Guard, side * Far.Y + H.EdgeDistance + H.Swell);
            foreach (var (q, v) in ((double, double)[])[(0.28, 0), (0.50, 0.18), (0.74, 0.72), (1, 1)])
                yield return new(Far.X * q, side * ((1 - v) * (NutWidth / 2 - H.Dip) + v * end));
        }

        public IEnumerable<Point2> Tip(Point2 bass, Point2 treble)
        {
            var u = Far.X + H.EdgeDistance + H.TipLength;
            var y = (bass.Y + treble.Y) / 2 + H.TipLean * (treble.Y - bass.Y) / 2;
            var d = 4 * H.TipLeg * H.TipLeg / (12 * H.TipRadius);
            var (bassTip, trebleTip) = (new Point2(u - d, y - H.TipLeg), new Point2(u - d, y + H.TipLeg));
            return [Hollowed(bass, bassTip, H.OgeeBass), bassTip, new(u + d / 2, y), trebleTip, Hollowed(treble, trebleTip, H.OgeeTreble)];
        }

        /// <summary>The middle of a join, moved square to it toward the nut by the ogee.</summary>
        private static Point2 Hollowed(Point2 edge, Point2 tip, double ogee)
        {
            var normal = (tip - edge).Unit.Left;
            return 0.5 * (edge + tip) + ogee * (normal.X <= 0 ? normal : -normal);
        }
    }
}
