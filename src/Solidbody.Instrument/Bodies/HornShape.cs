using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>A horn, its cutaway, the neck's flank and the shoulder's corner, in (x, w). Angles radians, lengths mm.</summary>
public sealed record HornShape
{
    public required Point2 Tip { get; init; }
    public required Point2 CutawayBottom { get; init; }
    public required double TipRadius { get; init; }
    public required double CutawayRadius { get; init; }
    /// <summary>ψ: how the outer flank runs from the horn toward the upper bout; NaN when no angle fits.</summary>
    public required double OuterFlankAngle { get; init; }
    public required double OuterFlankLength { get; init; }
    /// <summary>ψᵢ of the inner flank; NaN when no straight flank joins tip and cutaway.</summary>
    public required double InnerFlankAngle { get; init; }
    public required double InnerFlankLength { get; init; }
    public required double NeckFlankLength { get; init; }
    /// <summary>Shoulder corner as built: the wanted one, or less when the cutaway is shallow.</summary>
    public required double CornerRadius { get; init; }
    /// <summary>w of the flank beside the neck pocket.</summary>
    public required double FlankW { get; init; }
    /// <summary>From the horn's outer flank to the shoulder, in the curve's order.</summary>
    internal ImmutableArray<Point2> Controls { get; init; }

    // Extents of the spirals for radius 1 and a quarter turn (docs/shapes.md): across the first heading, and along it.
    internal const double Across3 = 1.328916, Along3 = 1.569849, Across4 = 1.618308, CornerExtent = 1.400589;
    /// <summary>Steepness of the outer flank against the line to the upper bout.</summary>
    private const double FlankLean = 1.9;

    /// <summary>Straight flank kept between cutaway and corner, mm.</summary>
    internal static double FlankKept(double cutawayRadius) => Math.Max(6, 0.65 * cutawayRadius);

    /// <summary>Where the horn's tip lies.</summary>
    internal static Point2 TipOf(ShoulderDefinition.Horned h, OutlineFrame frame) =>
        new(frame.ShoulderX - h.HornReach, frame.PocketHalfWidth + h.ShoulderMargin + h.CutawayWidth + Across4 * h.HornTipRadius);

    internal static HornShape Build(ShoulderDefinition.Horned h, OutlineFrame frame, Point2 upperBout)
    {
        var flankW = frame.PocketHalfWidth + h.ShoulderMargin;
        var tip = TipOf(h, frame);
        var bottom = new Point2(FretTable.Position(frame.Scale, h.CutawayFret), flankW + Across3 * h.CutawayRadius);

        Easing Outer(double angle) => Easing.From(tip, Math.PI / 2, -(Math.PI / 2 - angle), h.HornTipRadius, 4, Easing.Wide);
        Easing Inner(double angle) => Easing.From(tip, -Math.PI / 2, Math.PI / 2 - angle, h.HornTipRadius, 4, Easing.Wide);
        Easing Cutaway(double angle) => Easing.From(bottom, Math.PI / 2, Math.PI / 2 - angle, h.CutawayRadius, 4, Easing.Wide);

        var outerAngle = SolveOuterFlank(Outer, upperBout);
        var outer = Outer(outerAngle);
        var innerAngle = SolveInnerFlank(a => (Cutaway(a).Last - Inner(a).Last, a));
        var (inner, cutaway) = (Inner(innerAngle), Cutaway(innerAngle));
        var join = cutaway.Last - inner.Last;

        var neckSide = Easing.From(bottom, -Math.PI / 2, -Math.PI / 2, h.CutawayRadius, 3, Easing.Wide);
        var flankEnd = neckSide.Last.X;
        var radius = Math.Min(h.ShoulderCornerRadius, (flankEnd - frame.ShoulderX - FlankKept(h.CutawayRadius)) / CornerExtent);
        var toFlank = Easing.From(new(0, 0), Math.PI / 4, -Math.PI / 4, radius, 2, Easing.Narrow);
        var toShoulder = Easing.From(new(0, 0), -3 * Math.PI / 4, Math.PI / 4, radius, 2, Easing.Narrow);
        var shift = new Point2(frame.ShoulderX - toShoulder.Last.X, flankW - toFlank.Last.Y);
        (toFlank, toShoulder) = (toFlank.Moved(shift), toShoulder.Moved(shift));
        var neckFlank = flankEnd - toFlank.Last.X;
        var reach = 2.5 * toFlank.Leg;

        return new()
        {
            Tip = tip,
            CutawayBottom = bottom,
            TipRadius = h.HornTipRadius,
            CutawayRadius = h.CutawayRadius,
            OuterFlankAngle = outerAngle,
            OuterFlankLength = upperBout.DistanceTo(outer.Last),
            InnerFlankAngle = innerAngle,
            InnerFlankLength = join.X * Math.Cos(innerAngle) - join.Y * Math.Sin(innerAngle),
            NeckFlankLength = neckFlank,
            CornerRadius = radius,
            FlankW = flankW,
            Controls =
            [
                .. outer.Points.Reverse(), outer.Station, .. inner.Points,
                inner.Last + 0.5 * join,
                .. cutaway.Points.Reverse(), cutaway.Station, .. neckSide.Points,
                new(toFlank.Last.X + Math.Min(reach, neckFlank / 2), flankW),
                toFlank.Last, toFlank.Points[0], toFlank.Station, toShoulder.Points[0], toShoulder.Last,
                new(frame.ShoulderX, Math.Max(toShoulder.Last.Y - reach, toShoulder.Last.Y / 2)),
            ],
        };
    }

    /// <summary>Two control points that lead from the upper bout onto the outer flank: on the cubic Bézier that keeps both directions.</summary>
    internal IEnumerable<Point2> GuidesFrom(StationTriple upperBout)
    {
        var (from, to) = (upperBout.After, Controls[0]);
        var third = from.DistanceTo(to) / 3;
        var a = from + third * (upperBout.After - upperBout.Middle).Unit;
        var b = to + third * Point2.Polar(OuterFlankAngle);
        foreach (var t in (double[])[0.48, 0.80])
        {
            var s = 1 - t;
            yield return s * s * s * from + 3 * s * s * t * a + 3 * s * t * t * b + t * t * t * to;
        }
    }

    /// <summary>ψ = 1.9 · (direction from the flank's end to the upper bout), a damped fixed point; at most 60 rounds (typically 15).</summary>
    private static double SolveOuterFlank(Func<double, Easing> outer, Point2 upperBout)
    {
        var angle = 0.3;
        for (var round = 0; round < 60; round++)
        {
            var way = upperBout - outer(angle).Last;
            var change = 0.7 * (FlankLean * Math.Atan2(way.Y, way.X) - angle);
            angle += change;
            if (Math.Abs(change) < 1e-10) return angle;
        }
        return double.NaN;
    }

    /// <summary>ψᵢ such that the flank's ends lie on one line with that angle; bisection on [−0.35, 1.1] to 1e-13.</summary>
    private static double SolveInnerFlank(Func<double, (Point2 Join, double Angle)> flank)
    {
        double Miss(double angle) { var (v, a) = flank(angle); return v.X * Math.Sin(a) + v.Y * Math.Cos(a); }
        var (low, high) = (-0.35, 1.1);
        var atLow = Miss(low) > 0;
        if (atLow == Miss(high) > 0) return double.NaN;
        for (var i = 0; i < 44; i++)
        {
            var middle = (low + high) / 2;
            if (Miss(middle) > 0 == atLow) low = middle; else high = middle;
        }
        return (low + high) / 2;
    }
}
