using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>Distances in the finished part's exact shape. A vertical difference beside an upright wall would show the wall's whole height;
/// these say how far a point truly lies inside or outside.</summary>
internal sealed class IdealSolid(PartShape shape)
{
    /// <summary>Beyond this nothing is searched: a cut as wrong as that is no matter of tenths. mm.</summary>
    public const double Farthest = ProofLimits.OutlineBand;

    private const double Nearest = 0.005;   // radius of the first ring, and how sharply a wall is found
    private const double Growth = 1.5;      // from ring to ring
    private const int Directions = 16;      // a wall between two directions is over-estimated by 1/cos(π/16) − 1 = 2 % at most
    private const double Probe = 0.01;      // step for a face's slope
    private const double Enough = 0.02;     // a distance as small as this needs no better figure

    private static readonly Point2[] Rays = [.. Enumerable.Range(0, Directions).Select(i => Point2.Polar(2 * Math.PI * i / Directions))];

    /// <summary>How deep a point where wood must be lies inside the part; 0 outside. At most <paramref name="most"/>.</summary>
    /// <param name="p">Plan.</param>
    /// <param name="z">Height, part frame.</param>
    /// <param name="most">A bound already known, mm.</param>
    /// <param name="exact">False for a bound that is quickly had and near on smooth faces.</param>
    public double DepthInside(Point2 p, double z, double most, bool exact) => Search<ToAir>(p, z, most, exact);

    /// <summary>How far a point lies outside the part; 0 inside. At most <paramref name="most"/>.</summary>
    public double DistanceTo(Point2 p, double z, double most, bool exact) => Search<ToWood>(p, z, most, exact);

    private interface IGap
    {
        /// <summary>Vertical distance from z to the nearest place sought in a column; +∞ when it has none.</summary>
        static abstract double Of(in DesignColumn column, double z);
    }

    private readonly struct ToAir : IGap
    {
        public static double Of(in DesignColumn c, double z) =>
            c.IsEmpty ? 0 : Math.Max(0, Math.Min(c.TopDeepest - z, z - c.BottomDeepest));
    }

    private readonly struct ToWood : IGap
    {
        public static double Of(in DesignColumn c, double z) =>
            c.IsEmpty ? double.PositiveInfinity : Math.Max(0, Math.Max(z - c.Top, c.Bottom - z));
    }

    /// <remarks>First a step down the slope of the gap, which settles steep smooth faces; then rings round the point, each direction that finds
    /// the place sought narrowed by halving. Every answer is the distance to a real place, so it never flatters.</remarks>
    private double Search<TGap>(Point2 p, double z, double most, bool exact) where TGap : IGap
    {
        double Gap(Point2 at) => TGap.Of(shape.At(at), z);
        var here = Gap(p);
        var best = Math.Min(most, here);
        if (best <= Enough) return best;
        if (double.IsFinite(here))
        {
            Point2 slope = new((Gap(new(p.X + Probe, p.Y)) - Gap(new(p.X - Probe, p.Y))) / (2 * Probe), (Gap(new(p.X, p.Y + Probe)) - Gap(new(p.X, p.Y - Probe))) / (2 * Probe));
            var steep = slope.Length;
            if (double.IsFinite(steep) && steep > 0)
            {
                var step = here * steep / (1 + steep * steep);
                best = Math.Min(best, Distance(step, Gap(p - step * slope.Unit)));
            }
        }
        if (!exact || best <= Enough) return best;
        var inner = 0.0;
        for (var ring = Nearest; inner < Math.Min(best, Farthest); inner = ring, ring *= Growth)
            foreach (var ray in Rays)
            {
                var gap = Gap(p + ring * ray);
                best = Math.Min(best, Distance(ring, gap));
                if (gap > 0 || inner >= best) continue;
                var (miss, hit) = (inner, ring);
                while (hit - miss > Nearest / 2)
                {
                    var middle = (miss + hit) / 2;
                    if (Gap(p + middle * ray) > 0) miss = middle; else hit = middle;
                }
                best = Math.Min(best, hit);
            }
        return best;
    }

    private static double Distance(double along, double gap) => Math.Sqrt(along * along + gap * gap);
}
