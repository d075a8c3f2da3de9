using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>Lower bout and waist of a side, found on an outline that does not name them.</summary>
/// <param name="LowerBout">Furthest from the centre line in the rear half.</param>
/// <param name="Waist">Nearest to it between the lower bout and the front third, of what bounds the body outside.</param>
internal sealed record LoopStations(Point2 LowerBout, Point2 Waist)
{
    /// <summary>The front third holds horns and cutaways; the waist is looked for behind it in steps of this, mm.</summary>
    private const double FrontPart = 0.33, Step = 1;

    /// <param name="side">+1 treble, −1 bass.</param>
    public static LoopStations Of(Loop outline, int side)
    {
        var box = outline.Bounds;
        var bout = outline.Points.Where(p => p.X >= box.Centre.X).MaxBy(p => side * p.Y);
        var waist = bout;
        for (var x = box.X0 + FrontPart * box.Width; x < bout.X; x += Step)
            if (Segments.CrossingsAtX(outline, x) is { Count: > 0 } ys && Outer(ys, side) is var y && side * y < side * waist.Y) waist = new(x, y);
        return new(bout, waist);
    }

    private static double Outer(List<double> ys, int side) => side > 0 ? ys[^1] : ys[0];
}
