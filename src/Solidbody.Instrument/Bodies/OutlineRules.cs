using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>The rules under which an outline cannot cross itself or kink (docs/shapes.md), each naming the measure to change.</summary>
internal static class OutlineRules
{
    /// <summary>What is broken, each with a way out.</summary>
    public static ImmutableArray<Finding> Check(OutlineDefinition o, OutlineFrame frame, OutlineSide treble, OutlineSide bass, Func<OutlineDefinition, ImmutableArray<OutlineRule>> rules)
    {
        var now = Of(o, frame, treble, bass);
        return [.. Enumerable.Range(0, now.Length).Where(i => !now[i].Holds).Select(i => OutlineFindings.Rule(now[i], OutlineWayOut.Of(o, i, rules)))];
    }

    /// <summary>Every rule, in one order for the same kinds of shoulder.</summary>
    public static ImmutableArray<OutlineRule> Of(OutlineDefinition o, OutlineFrame frame, OutlineSide treble, OutlineSide bass)
    {
        var found = ImmutableArray.CreateBuilder<OutlineRule>();
        void Linear(string place, string what, double figure, double limit, string change) => found.Add(new(place, what, figure, limit, false, change, true));
        void AtLeast(string place, string what, double figure, double limit, string change) => found.Add(new(place, what, figure, limit, false, change, false));
        void AtMost(string place, string what, double figure, double limit, string change) => found.Add(new(place, what, figure, limit, true, change, false));

        AtMost("body outline", "tail offset, either way", Math.Abs(o.TailOffset), 0.1 * o.LowerBoutWidth, "bring the tail offset nearer the centre line");
        foreach (var side in (OutlineSide[])[treble, bass])
        {
            var place = $"body outline, {side.Name} side";
            var (l, w, u) = (side.LowerBout, side.Waist, side.UpperBout);
            Linear(place, "tail to lower bout along the body", side.TailToBout, 0.20 * o.BodyLength, "raise lower bout at, or lessen its skew");
            Linear(place, "lower bout to waist along the body", l.X - w.X, 0.16 * o.BodyLength, "move lower bout and waist apart, or lessen their skews");
            Linear(place, "waist to upper bout along the body", w.X - u.X, 0.13 * o.BodyLength, "move waist and upper bout apart, or lessen their skews");
            Linear(place, "waist inside the lower bout", l.Y - w.Y, 8, "narrow the waist or widen the lower bout");
            Linear(place, "waist inside the upper bout", u.Y - w.Y, 5, "narrow the waist or widen the upper bout");
            AtLeast(place, "radius of the waist", side.WaistRadius, 35, "widen the waist or move it away from the bouts");
            if (side.Horn is { } horn)
            {
                Linear(place, "upper bout behind the horn's tip", u.X - horn.Tip.X, 45, "lower upper bout at, or lengthen the horn");
                AtLeast(place, "outer flank of the horn", horn.OuterFlankLength, 3.2 * horn.TipRadius, "lower upper bout at, or take a smaller horn tip radius");
                var (outer, inner) = (double.RadiansToDegrees(horn.OuterFlankAngle), double.RadiansToDegrees(horn.InnerFlankAngle));
                AtLeast(place, "angle of the outer flank, degrees", outer, 8, "widen the upper bout, or narrow the cutaway");
                AtMost(place, "angle of the outer flank, degrees", outer, 35, "narrow the upper bout, or widen the cutaway");
                AtLeast(place, "angle of the inner flank, degrees", inner, -6, "widen the cutaway or take a smaller cutaway radius");
                AtMost(place, "angle of the inner flank, degrees", inner, 30, "narrow the cutaway or move its fret toward the last");
                AtLeast(place, "growth of the horn toward its root, degrees", outer + inner, 4, "widen the upper bout");
                AtLeast(place, "straight inner flank", horn.InnerFlankLength, 10, "lengthen the horn or deepen the cutaway");
                AtLeast(place, "cutaway bottom behind the shoulder line", horn.CutawayBottom.X - frame.ShoulderX,
                    HornShape.Along3 * horn.CutawayRadius + 4 * HornShape.CornerExtent + HornShape.FlankKept(horn.CutawayRadius), "raise the cutaway fret or take a smaller cutaway radius");
                Linear(place, "waist outside the cutaway's bottom", w.Y - horn.CutawayBottom.Y, 25, "widen the waist");
                Linear(place, "waist behind the cutaway's bottom", w.X - horn.CutawayBottom.X, 25, "lower waist at, or lower the cutaway fret");
            }
            if (side.Rounded is { } rounded)
            {
                Linear(place, "upper bout behind the shoulder line", u.X - frame.ShoulderX, 50, "lower upper bout at");
                Linear(place, "upper bout outside the straight shoulder", u.Y - rounded.ShoulderMeet, 60, "widen the upper bout or lessen shoulder meet");
            }
        }
        return found.ToImmutable();
    }

    /// <summary>Whether the side's polygon is made of chains monotone in x that lie outer over inner over neck flank, away from the centre line:
    /// then the curve, which turns no more often than its polygon, cannot cross itself.</summary>
    public static bool IsOrdered(OutlineSide side)
    {
        var points = side.Controls;
        if (points.Any(p => !(p.Y > 0))) return false;
        if (side.Horn is null) return IsMonotone(points, -1);
        // Horn tip and cutaway bottom are the foremost and the rearmost control point of their stretch.
        var tip = IndexOfExtreme(points, 0, points.Length, -1);
        var bottom = IndexOfExtreme(points, tip, points.Length, +1);
        ImmutableArray<Point2> outer = points[..(tip + 1)], inner = points[tip..(bottom + 1)], neck = points[bottom..];
        return IsMonotone(outer, -1) && IsMonotone(inner, +1) && IsMonotone(neck, -1) && IsAbove(outer, inner) && IsAbove(inner, neck);
    }

    private static int IndexOfExtreme(ImmutableArray<Point2> points, int from, int to, int sign)
    {
        var best = from;
        for (var i = from; i < to; i++) if (sign * points[i].X > sign * points[best].X) best = i;
        return best;
    }

    private static bool IsMonotone(ImmutableArray<Point2> chain, int sign)
    {
        for (var i = 1; i < chain.Length; i++) if (sign * (chain[i].X - chain[i - 1].X) < -Tolerances.Geometry) return false;
        return true;
    }

    /// <summary>Whether the first chain lies further out than the second wherever both have points.</summary>
    private static bool IsAbove(ImmutableArray<Point2> upper, ImmutableArray<Point2> lower)
    {
        foreach (var p in lower)
            if (HeightAt(upper, p.X) is { } w && w < p.Y - Tolerances.Geometry) return false;
        return true;
    }

    private static double? HeightAt(ImmutableArray<Point2> chain, double x)
    {
        for (var i = 1; i < chain.Length; i++)
        {
            var (a, b) = chain[i - 1].X < chain[i].X ? (chain[i - 1], chain[i]) : (chain[i], chain[i - 1]);
            if (x > a.X && x < b.X) return a.Y + (x - a.X) / (b.X - a.X) * (b.Y - a.Y);
        }
        return null;
    }
}
