using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>The control cavity in the plan: a rectangle, or a rounded hull round its shafts' rooms.</summary>
internal sealed class ControlsPlan(ControlsDefinition c)
{
    private Point2 Centre => new(c.CentreX, c.CentreY);

    /// <summary>The cavity's wall moved outward, mm; rounded corners keep their middles.</summary>
    public Loop Grown(double by)
    {
        if (!c.IsAroundShafts) return Shapes.Rectangle(Centre, c.Length + 2 * by, c.Width + 2 * by, c.CornerRadius + by, c.Angle);
        return Loop.Of(Hull.Of([.. Shafts.SelectMany(s => Shapes.Circle(s.At, s.Shaft.Room + by).Points)]));
    }

    /// <summary>The shafts and where they stand.</summary>
    public IEnumerable<(ShaftDefinition Shaft, Point2 At)> Shafts => c.Shafts.Select(s => (s, Centre + new Point2(s.Along, s.Across).Turned(c.Angle)));

    /// <summary>What a shaft takes out of the front: a disc, or a slot with round ends.</summary>
    public (Point2 A, Point2 B) Opening(ShaftDefinition s, Point2 at)
    {
        var half = Math.Max(0, s.Slot - s.Diameter) / 2 * Direction(s);
        return (at - half, at + half);
    }

    public Point2 Direction(ShaftDefinition s) => Point2.Polar(c.Angle + s.Turn);
}
