using Solidbody.Findings;

namespace Solidbody.Instrument.Checks;

internal static class TremoloChecks
{
    public static IEnumerable<Finding> Of(BodyDefinition body)
    {
        if (body.Tremolo is not { } t) yield break;
        var bridge = body.Bridge;
        var beside = Math.Max(Math.Max(bridge.PlateFrom - t.OpeningFrom, t.OpeningTo - bridge.PlateTo), t.OpeningWidth / 2 - bridge.PlateHalfWidth);
        if (!(beside <= 0)) yield return TremoloFindings.OpeningShows(beside);
        if (bridge.StringThroughAt is not null) yield return TremoloFindings.StringsThroughBody();
        if (t.OpeningFrom - t.SpringsFrom is var length && !(length >= Limits.SpringRoom)) yield return TremoloFindings.NoRoomForSprings(length);
        if (body.Thickness - t.Depth is var left && !(left >= Limits.UnderPickup)) yield return TremoloFindings.ThinFront(left);
        if (!(t.SpringsWidth <= t.OpeningWidth)) yield return TremoloFindings.SpringsBesideBlock(t.SpringsWidth, t.OpeningWidth);
    }
}
