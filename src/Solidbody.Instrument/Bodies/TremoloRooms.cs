using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>What a tremolo takes out of the body: an opening in the front that meets the block's well and the spring cavity in the back, its claw's screws and its cover's.</summary>
internal static class TremoloRooms
{
    public static IEnumerable<Pocket> Of(InstrumentDefinition d)
    {
        if (d.Body.Tremolo is not { } t) yield break;
        var floor = new LevelHeight(Floor(d.Body, t));
        yield return new(RoomNames.TremoloOpening, Side.Front, new(Box(d, t.OpeningFrom, t.OpeningTo, t.OpeningWidth)), new LevelHeight(floor.At - Drilling.Overlap)) { Into = RoomNames.BlockWell };
        if (t.LedgeDepth > 0) yield return new(RoomNames.SpringLedge, Side.Back, new(CoverSeat(d, t, t.LedgeWidth)), new LevelHeight(-d.Body.Thickness + t.LedgeDepth)) { Into = RoomNames.Springs };
        yield return new(RoomNames.Springs, Side.Back, new(Box(d, t.SpringsFrom, t.OpeningTo, t.SpringsWidth)), floor);
        yield return new(RoomNames.BlockWell, Side.Back, new(Box(d, t.OpeningFrom, t.OpeningTo + t.Swing, Math.Max(t.OpeningWidth, t.SpringsWidth))), floor) { Into = RoomNames.Springs };
    }

    public static IEnumerable<Hole> Holes(InstrumentDefinition d) =>
        Cover(d) is { } cover && d.Body.Tremolo is { } t ? cover.Pilots("spring cover screw pilot", -d.Body.Thickness + t.LedgeDepth, t.LedgeDepth > 0 ? RoomNames.SpringLedge : null) : [];

    /// <summary>The claw's pilots, from the spring cavity's wall toward the neck, as steep as a drill laid over the cavity's far edge must stand.</summary>
    public static IEnumerable<HandBore> ClawPilots(InstrumentDefinition d)
    {
        if (d.Body.Tremolo is not { } t) yield break;
        var (place, z) = (BridgePlace.Of(d), -d.Body.Thickness + t.Depth / 2);
        var lie = DrillLie.Over(t.Depth / 2, t.OpeningTo + t.Swing - t.SpringsFrom, t.ClawPilot);
        foreach (var (side, i) in ((double, int)[])[(-0.5, 1), (0.5, 2)])
        {
            var (a, b) = (place.At(t.SpringsFrom, side * t.ClawScrewsApart), place.At(t.SpringsFrom - t.ClawDepth * Math.Cos(lie.Angle), side * t.ClawScrewsApart));
            yield return new($"claw screw pilot {i}", new(a.X, a.Y, z), new(b.X, b.Y, z + t.ClawDepth * Math.Sin(lie.Angle)), t.ClawPilot,
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"from the spring cavity, the drill laid over its far edge at {double.RadiansToDegrees(lie.Angle):0} degrees"))
            { Into = [RoomNames.Springs] };
        }
    }

    public static CoverPlate? Cover(InstrumentDefinition d) => d.Body.Tremolo is { } t ? CoverPlate.Of(CoverPlate.OverSprings, by => CoverSeat(d, t, by), t.LedgeWidth, t.Cover, null) : null;

    /// <summary>Height of spring cavity and well.</summary>
    public static double Floor(BodyDefinition body, TremoloDefinition t) => -body.Thickness + t.Depth;

    /// <summary>The rectangle over spring cavity and well, grown.</summary>
    private static Loop CoverSeat(InstrumentDefinition d, TremoloDefinition t, double by) =>
        Box(d, t.SpringsFrom - by, t.OpeningTo + t.Swing + by, Math.Max(t.OpeningWidth, t.SpringsWidth) + 2 * by, TremoloDefinition.CornerRadius + by);

    private static Loop Box(InstrumentDefinition d, double from, double to, double width, double corner = TremoloDefinition.CornerRadius)
    {
        var place = BridgePlace.Of(d);
        return Shapes.Rectangle(place.At((from + to) / 2, 0), to - from, width, corner, place.Turn);
    }
}
