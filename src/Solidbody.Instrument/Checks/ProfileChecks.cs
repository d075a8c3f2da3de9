using Solidbody.Findings;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

/// <summary>Whether the section of the neck's back is one a hand and a cutter can follow.</summary>
internal static class ProfileChecks
{
    /// <summary>Places across, to this fraction of the half width; and what rounding may bend the section the wrong way, per place.</summary>
    private const int Across = 96;
    private const double EdgeFraction = 0.985, Rounding = 1e-9;

    public static IEnumerable<Finding> Of(InstrumentDefinition d, NeckBack back)
    {
        foreach (var (fret, profile, depth) in ((int, NeckProfile, double)[])[(1, back.Profile, back.DepthAtFret1), (12, back.ProfileAt12 ?? back.Profile, back.DepthAtFret12)])
        {
            if (Hollow(profile) is { } e) yield return ProfileFindings.Hollow(fret, e);
            var x = FretTable.Position(d.Scale, fret);
            var steepest = Math.Atan((depth - back.Lip) / back.HalfWidth(x) * Math.Max(Math.Abs(profile.At(-1).Slope), Math.Abs(profile.At(1).Slope)));
            if (!(steepest <= Limits.SteepestEdge)) yield return ProfileFindings.SteepEdge(fret, steepest);
        }
    }

    /// <summary>Where a section first bends inward, as a fraction of the half width; null when it is convex: its slope falls all the way across.</summary>
    internal static double? Hollow(NeckProfile profile)
    {
        var before = double.PositiveInfinity;
        for (var i = 0; i <= Across; i++)
        {
            var e = EdgeFraction * (2.0 * i / Across - 1);
            var slope = profile.At(e).Slope;
            if (!(slope <= before + Rounding)) return e;
            before = slope;
        }
        return null;
    }
}
