using Solidbody.Geometry;
using Solidbody.Shop;

namespace Solidbody.Machining.Feeds;

/// <summary>How much wood a cutter takes in a second at most: what a lower bound of cutting time is worked out from.</summary>
public static class RemovalRate
{
    /// <summary>The greatest rate the limits allow: Q = ap·ae·F over all bites no deeper than the roughing step-down and no wider than given.</summary>
    /// <param name="cutter">Of a drill: the bore's section times its feed; <paramref name="widest"/> plays no part.</param>
    /// <param name="wood">As the shop works it.</param>
    /// <param name="shop">Its axes, spindle and side force; pinned settings hold here too.</param>
    /// <param name="widest">Greatest ae the path may ask for, mm; null for a slot, the widest there is. More than that counts as that.</param>
    /// <returns>mm³/s; &gt; 0. Its feed is rounded down to whole mm/min, as programs say it.</returns>
    /// <remarks>The deepest and widest bite is the best: at a given width every limit either leaves the feed alone as the bite gets deeper or lets the product ap·F stay or grow;
    /// at a given depth the chip, ae/sin φ ∝ tan(φ/2), grows with width, and so do the others. Tests hold it against a search over all bites.
    /// A ball-end or roundover takes less than the upright bite counted here, so a time worked out with it stays a lower bound.</remarks>
    public static double Greatest(Cutter cutter, WoodOnHand wood, ShopDefinition shop, double? widest = null)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        if (cutter.Kind == CutterKind.Drill) return Math.PI / 4 * cutter.Diameter * cutter.Diameter * FeedPlanner.For(cutter, wood, shop).Feed;
        var driven = new DrivenCutter(cutter, wood, shop);
        var bite = new Bite(driven.StepDown, Math.Min(widest ?? driven.EdgeDiameter, driven.EdgeDiameter));
        return bite.Depth * bite.Width * driven.Feed(bite, Pass.Roughing);
    }
}
