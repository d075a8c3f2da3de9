using Solidbody.Geometry;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Bodies;

/// <summary>Where the bridge stands: on the scale line's middle, and on a fan turned with it if it follows.</summary>
/// <param name="ScaleX">The scale line on the centre line, mm.</param>
/// <param name="Turn">Radians, counter-clockwise seen from the front.</param>
internal sealed record BridgePlace(double ScaleX, double Turn)
{
    public static BridgePlace Of(InstrumentDefinition d) => new(NeckSeat.ScaleLine(d), d.Body.Bridge.FollowsFan ? FretLayout.Of(d).ScaleLine.Turn : 0);

    /// <summary>Under a string's saddle: a neck that leans moves them all alike.</summary>
    public Point2 Saddle(Strings strings, int i) => strings.Saddle(i) + new Point2(ScaleX - strings.Scale, 0);

    /// <summary>From the bridge's own measures (behind the scale line, toward the treble side) to the plan.</summary>
    public Point2 At(double x, double y) => new Point2(ScaleX, 0) + new Point2(x, y).Turned(Turn);
    /// <summary>And back.</summary>
    public Point2 Own(Point2 p) => (p - new Point2(ScaleX, 0)).Turned(-Turn);

    public Region Plate(BridgeDefinition b) => new(Shapes.Rectangle(At((b.PlateFrom + b.PlateTo) / 2, 0), b.PlateTo - b.PlateFrom, 2 * b.PlateHalfWidth, 0, Turn));
}
