using Solidbody.Geometry;

namespace Solidbody.Programs.Writing;

/// <summary>Writes an arc so that its rounded numbers still obey the radius rule; otherwise as chords.</summary>
/// <remarks>
/// Rounding moves both ends and the centre by up to half a step each way, so the two radii may come to differ by almost three steps.
/// The centre is therefore chosen among the grid points next to the true one: the nearest that obeys <see cref="ArcRule"/>.
/// Arcs over half a turn are written as two, so that two nearly equal ends never decide between nothing and a whole turn.
/// </remarks>
internal sealed class ArcWriter(BlockWriter blocks, OutputGrid grid, ProgramStyle style)
{
    /// <summary>Share of the radius rule used: the rest is for the reader's own rounding.</summary>
    private const double RuleShare = 0.95;

    public void Write(in Motion arc)
    {
        var radius = (arc.From.Plan - arc.Centre).Length;
        var sweep = arc.Sweep;
        var bulge = radius * (1 - Math.Cos(Math.Abs(sweep) / 2));
        if (!style.Arcs || radius < style.LeastArcRadius || radius > style.MostArcRadius || bulge < grid.Step / 2)
        {
            Chords(arc, 0, sweep, radius);
            return;
        }
        var pieces = Math.Abs(sweep) > Math.PI * (1 + 1e-9) ? 2 : 1;
        for (var piece = 0; piece < pieces; piece++)
        {
            var to = grid.Nearest(PointAt(arc, sweep, (piece + 1.0) / pieces));
            if (Centre(arc.Centre, to) is var (i, j)) blocks.ArcTo(arc.Kind == MotionKind.ArcClockwise ? 2 : 3, to, i, j, arc.Feed);
            else
            {
                Chords(arc, (double)piece / pieces, sweep, radius);
                return;
            }
        }
    }

    /// <summary>The centre in steps from the tip: the grid point nearest the true centre whose two radii agree; null when none next to it does.</summary>
    private (long I, long J)? Centre(Point2 centre, GridPoint to)
    {
        var from = blocks.At;
        var exactX = (centre.X - grid.Millimetres(from.X)) / grid.Step;
        var exactY = (centre.Y - grid.Millimetres(from.Y)) / grid.Step;
        var (nearX, nearY) = ((long)Math.Round(exactX), (long)Math.Round(exactY));
        var allowed = RuleShare * ArcRule.Difference(style.Inches) / grid.Step;
        (long, long)? best = null;
        var bestShift = double.PositiveInfinity;
        for (var i = nearX - 1; i <= nearX + 1; i++)
            for (var j = nearY - 1; j <= nearY + 1; j++)
            {
                double endX = to.X - from.X - i, endY = to.Y - from.Y - j;
                var difference = Math.Abs(Math.Sqrt((double)i * i + (double)j * j) - Math.Sqrt(endX * endX + endY * endY));
                var shift = (i - exactX) * (i - exactX) + (j - exactY) * (j - exactY);
                if (difference > allowed || shift >= bestShift) continue;
                best = (i, j);
                bestShift = shift;
            }
        return best;
    }

    /// <summary>Straight lines between points of the arc, bulging at most <see cref="Tolerances.Flattening"/> from it before rounding.</summary>
    private void Chords(in Motion arc, double begin, double sweep, double radius)
    {
        var halfChord = Math.Acos(Math.Max(0, 1 - Tolerances.Flattening / radius));
        var count = Math.Max(1, (int)Math.Ceiling((1 - begin) * Math.Abs(sweep) / (2 * halfChord)));
        for (var i = 1; i <= count; i++)
            blocks.MoveTo(1, grid.Nearest(PointAt(arc, sweep, begin + (1 - begin) * i / count)), arc.Feed);
    }

    /// <summary>The point at a fraction of the arc's way; at 1 the arc's own end.</summary>
    private static WorkPoint PointAt(in Motion arc, double sweep, double fraction)
    {
        if (fraction >= 1) return arc.To;
        var plan = arc.Centre + (arc.From.Plan - arc.Centre).Turned(sweep * fraction);
        return new(plan.X, plan.Y, arc.From.Z + (arc.To.Z - arc.From.Z) * fraction);
    }
}
