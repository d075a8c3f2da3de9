using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Comparing;

/// <summary>Where wood outside the outline is a tab, or a skin under it, and meant to stand.</summary>
internal sealed class TabAllowance
{
    /// <summary>How much higher or lower than stated a tab may stand, mm: it is trimmed by hand.</summary>
    private const double HeightPlay = 0.1;

    private readonly ImmutableArray<(Tab Tab, double Reach)> tabs;
    private readonly Skin? skin;

    /// <param name="sound">Tabs within the limits for tabs. Beyond a tab's stated length the cutter's round end leaves up to one diameter more a side.</param>
    /// <param name="skin">A skin within the limits for skins; null for none.</param>
    public TabAllowance(IEnumerable<(SetUp SetUp, Tab Tab)> sound, Skin? skin)
    {
        this.skin = skin;
        tabs = [.. sound.Select(s => (s.Tab, s.Tab.Length / 2 + s.SetUp.Programs.Where(p => p.Cutter.IsFlat).Select(p => p.Cutter.Diameter).DefaultIfEmpty(0).Max()))];
    }

    /// <summary>Whether wood from <paramref name="bottom"/> to <paramref name="top"/> over a point within the outline's band is a tab's or the skin's.</summary>
    public bool Covers(Point2 p, double bottom, double top)
    {
        if (skin is { } under && bottom >= under.Z0 - HeightPlay && top <= under.Z1 + HeightPlay) return true;
        foreach (var (tab, reach) in tabs)
            if (p.DistanceTo(tab.At) <= reach + ProofLimits.OutlineBand && bottom >= tab.Z0 - HeightPlay && top <= tab.Z1 + HeightPlay) return true;
        return false;
    }
}
