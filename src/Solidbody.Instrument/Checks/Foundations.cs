using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Bought;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

/// <summary>What must hold before any part can be drawn: everything here stops.</summary>
internal static class Foundations
{
    public static ImmutableArray<Finding> Check(InstrumentDefinition d) => d.BoughtNeck is { } bought ? [.. BoughtNeckChecks.Foundations(d, bought)] : [.. Neck(d), .. Headstock(d)];

    private static IEnumerable<Finding> Neck(InstrumentDefinition d)
    {
        if (NeckProfile.Named(d.Neck.Profile) is not { } family) { yield return NeckFindings.UnknownProfile(d.Neck.Profile); yield break; }
        var joint = NeckJoint.Of(d);
        foreach (var (fret, thickness) in ((int, double)[])[(1, d.Neck.ThicknessAtFret1), (12, d.Neck.ThicknessAtFret12)])
        {
            var least = d.Fretboard.Thickness + d.Neck.Lip + Limits.ShaftBelowLip;
            if (!(thickness >= least)) yield return NeckFindings.TooThin(fret, thickness, least);
        }
        var back = NeckMaker.Back(d, d.Neck.Section ?? family);
        var (from, least2) = (back.HeelBlendFrom(1), -back.Head.StartEdge);
        if (!(from >= least2)) yield return NeckFindings.NoShaft(from, least2);
        if (Tenon.HalfWidth(d) is { } tenon && FretboardMaker.HalfWidth(d, Tenon.ShoulderX(joint)) - tenon is var step && !(step >= Tenon.Hollow)) yield return TenonFindings.SmallStep(step);
        if (Tenon.HalfWidth(d) is { } t && !(2.2 * joint.PocketCorner <= 2 * t)) yield return PocketFindings.CornerTooLarge(joint.PocketCorner, 2 * t / 2.2);
        // Two end corners need the heel's width, and some flat between them.
        if (!(joint.PocketCorner <= joint.MostCorner)) yield return PocketFindings.CornerTooLarge(joint.PocketCorner, joint.MostCorner);
    }

    private static IEnumerable<Finding> Headstock(InstrumentDefinition d)
    {
        var (h, strings) = (d.Headstock, Strings.Of(d));
        if (h.TunersBass + h.TunersTreble != d.Strings || d.Strings < 1) { yield return HeadFindings.TunerCount(h.TunersBass, h.TunersTreble, d.Strings); yield break; }
        if (TunerPosts.Of(h, strings).Any(p => !double.IsFinite(p.X + p.Y))) { yield return HeadFindings.NoPlaceForPosts(h.TunerPitch); yield break; }
        foreach (var side in (int[])[-1, 1])
            if (NutHollow.Of(h, strings, FretboardMaker.HalfWidth(d, -strings.HeadFrom), side) is { } edge && !NutHollow.Holds(edge))
                yield return HeadFindings.HollowTooTight(side < 0 ? "bass" : "treble", edge.From, edge.Least);
        if (CrossesItself(NeckMaker.Headstock(d).Curve.Flatten(0.05))) yield return HeadFindings.Crosses();
    }

    private static bool CrossesItself(ImmutableArray<Point2> path)
    {
        for (var i = 0; i + 1 < path.Length; i++)
            for (var j = i + 2; j + 1 < path.Length; j++)
            {
                var (a, b, c, e) = (path[i], path[i + 1], path[j], path[j + 1]);
                if ((b - a).Cross(c - a) * (b - a).Cross(e - a) < 0 && (e - c).Cross(a - c) * (e - c).Cross(b - c) < 0) return true;
            }
        return false;
    }
}
