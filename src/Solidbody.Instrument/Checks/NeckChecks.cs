using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

internal static class NeckChecks
{
    public static IEnumerable<Finding> Of(InstrumentDefinition d, Part neck, NeckBack back, HeadstockOutline headstock)
    {
        var (rod, joint) = (d.Neck.Rod, NeckJoint.Of(d));
        var fret12 = FretTable.Position(d.Scale, 12);
        if (d.Frets >= 12 && back.HeelBlendFrom(back.Apex(fret12)) is var blend && blend < fret12) yield return NeckFindings.BlendAtFret12(blend, fret12);

        var (at, cover) = LeastCover(d, back);
        if (!(cover >= rod.LeastCover)) yield return NeckFindings.RodCover(at, cover, rod.LeastCover);
        if (!(joint.HeelEnd - rod.End >= Limits.RodToHeelEnd)) yield return NeckFindings.RodAtHeelEnd(joint.HeelEnd - rod.End);
        if (NeckMaker.AccessSpan(d) is var (_, access) && rod.Start > access) yield return NeckFindings.RodWithoutAccess(rod.Start, access);

        if (NeckHollows.Tightest(back, neck.Bounds.X0) is var (hollow, radius) && radius < Limits.HollowRadius) yield return NeckFindings.HollowTooTight(hollow, radius);

        foreach (var finding in ProfileChecks.Of(d, back)) yield return finding;
        foreach (var (post, i) in headstock.Posts.Select((p, i) => (p, i + 1)))
            if (OffLevel(back, HeadFace.Of(d).Plan(post), d.Headstock.TunerHole / 2) is var off && !(off <= Limits.TunerSeat)) { yield return NeckFindings.TunerOnBlend(i, off); break; }

        foreach (var pilot in neck.Holes.Where(h => h.From == Side.Back))
        {
            if (-neck.Outline.SignedDistance(pilot.Centre) - pilot.Diameter / 2 is var side && !(side >= Limits.ScrewToSide && pilot.Centre.X > back.HeelX)) yield return NeckFindings.ScrewOffHeel(pilot.Centre, side);
            var gap = Math.Abs(pilot.Centre.Y) - pilot.Diameter / 2 - rod.Width / 2;
            if (pilot.Tip > -rod.Depth - Limits.BeyondScrew && pilot.Centre.X < rod.End + pilot.Diameter && !(gap >= Limits.HoleToRoom)) yield return NeckFindings.ScrewAtRod(pilot.Centre, gap);
        }
        if (neck.Holes.FirstOrDefault(h => h.From == Side.Back) is { } first && !(-first.Tip >= Limits.BeyondScrew)) yield return NeckFindings.ScrewTooLong(-first.Tip);
    }

    /// <summary>How far the headstock's back is off its plane under a tuner, toward nut and middle of the hole, mm.</summary>
    private static double OffLevel(NeckBack back, Point2 at, double reach) =>
        ((double[])[0, reach]).Max(d => Math.Abs(back.Depth(at.X + d, at.Y) - back.HeadDepth(-at.X - d)));

    /// <summary>Least wood under rod channel and access, at both corners of the floor: one-sided backs are judged fairly.</summary>
    internal static (Point2 At, double Cover) LeastCover(InstrumentDefinition d, NeckBack back)
    {
        var rod = d.Neck.Rod;
        var access = NeckMaker.AccessSpan(d);
        (Point2 At, double Cover) least = (default, double.PositiveInfinity);
        for (var x = Math.Min(rod.Start, access?.From ?? rod.Start); x <= rod.End; x += 0.5)
        {
            var half = access is var (from, to) && x >= from && x <= to ? Math.Max(rod.AccessWidth, rod.Width) / 2 : rod.Width / 2;
            foreach (var y in (double[])[-half, half])
                if (back.Depth(x, y) - rod.Depth is var cover && cover < least.Cover) least = (new(x, y), cover);
        }
        return least;
    }
}
