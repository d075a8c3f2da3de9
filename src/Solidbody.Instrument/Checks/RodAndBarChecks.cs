using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Necks;
using Solidbody.Instrument.Playing;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether rod and bars find room in the neck.</summary>
internal static class RodAndBarChecks
{
    /// <summary>Bar channels are looked at in steps of this along the neck, mm: the back changes slowly.</summary>
    private const double Step = 2;

    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part neck, NeckBack back)
    {
        var (rod, bars) = (d.Neck.Rod, d.Neck.Bars);
        var needs = rod.Kind == RodKind.DoubleAction ? 2 * rod.Diameter : rod.Diameter;
        if (!(rod.Diameter <= rod.Width && needs <= rod.Depth)) yield return StrengthFindings.RodDoesNotFit(rod, needs);
        if (bars.Count == 0) yield break;

        var least = rod.LeastCover;
        if (Thinnest(bars, back) is var (at, cover) && !(cover >= least)) yield return StrengthFindings.BarBreaksThrough(at, cover, least);
        if (NeckJoint.Of(d).HeelEnd - bars.End is var left && !(left >= Limits.RodToHeelEnd)) yield return StrengthFindings.BarAtHeelEnd(left);
        if (bars.Offset - (bars.Width + rod.Width) / 2 is var gap && !(gap >= Limits.HoleToRoom)) yield return StrengthFindings.BarAtRod(gap);
        foreach (var pilot in neck.Holes.Where(h => h.From == Side.Back && h.Tip > -bars.Depth - Limits.BeyondScrew && h.Centre.X < bars.End + h.Diameter))
            if (Math.Abs(Math.Abs(pilot.Centre.Y) - bars.Offset) - (pilot.Diameter + bars.Width) / 2 is var room && !(room >= Limits.HoleToRoom))
                yield return StrengthFindings.BarAtScrew(pilot.Centre, room);
    }

    /// <summary>Least wood under the bars' channels, at the corners of their floors.</summary>
    private static (Point2 At, double Cover) Thinnest(BarsDefinition bars, NeckBack back)
    {
        (Point2 At, double Cover) least = (default, double.PositiveInfinity);
        var steps = Math.Max(1, (int)Math.Ceiling((bars.End - bars.Start) / Step));
        for (var k = 0; k <= steps; k++)
            foreach (var side in bars.Sides)
                foreach (var y in (double[])[side - bars.Width / 2, side + bars.Width / 2])
                {
                    var at = new Point2(bars.Start + (bars.End - bars.Start) * k / steps, y);
                    if (back.Depth(at.X, at.Y) - bars.Depth is var cover && !(cover >= least.Cover)) least = (at, cover);
                }
        return least;
    }
}
