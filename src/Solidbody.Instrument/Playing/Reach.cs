using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Playing;

/// <summary>How the hand comes at the highest frets on one side of the neck: measured on the body's own loop, whoever drew it. Right-handed plan, mm.</summary>
/// <param name="Side">−1 bass, +1 treble.</param>
/// <param name="BottomX">Where a finger beside the neck meets the body: the cutaway's bottom, or a rounded shoulder.</param>
/// <param name="LastFretX">The last fret at the board's edge.</param>
/// <param name="FretsOverBody">Frets beyond the bottom.</param>
/// <param name="Thickness">What the hand must pass at the last fret, at the board's edge: from the back of body or neck to the playing face on the centre line.</param>
/// <param name="Room">Between the wood beside the neck and the horn's wall, at the last fret before the bottom; null without a horn there.</param>
public sealed record Reach(int Side, double BottomX, double LastFretX, int FretsOverBody, double Thickness, double? Room)
{
    /// <summary>A finger's thickness: so far beside the neck's edge the body is in its way. Common practice, no source.</summary>
    public const double Finger = 14;

    /// <summary>How far the last fret lies behind the cutaway's bottom; negative when it stands free of the body.</summary>
    public double BehindBottom => LastFretX - BottomX;
    public string Name => Side < 0 ? "bass" : "treble";

    /// <summary>Bass side, then treble.</summary>
    /// <param name="d">The definition.</param>
    /// <param name="body">The body, right-handed.</param>
    /// <param name="neckBack">The neck's back below its glue plane; null for a bought neck, which then counts as its heel.</param>
    internal static ImmutableArray<Reach> Of(InstrumentDefinition d, Part body, IHeight? neckBack) => [On(d, body, neckBack, -1), On(d, body, neckBack, +1)];

    private static Reach On(InstrumentDefinition d, Part body, IHeight? neckBack, int side)
    {
        var (layout, seat, gluePlane) = (FretLayout.Of(d), NeckSeat.Of(d), d.Neck.Heel.Thickness);
        var face = gluePlane + d.Fretboard.Thickness;
        Point2 Edge(int fret) => layout.AtEdge(layout.Fret(fret), side) is var p ? new(seat.X(p.X, face), p.Y) : default;

        var (last, outside) = (Edge(d.Frets), new Point2(0, side * Finger));
        var (from, along) = (Edge(0) + outside, (last - Edge(0)).Unit);
        var bottom = from.X + along.X * Segments.FromOutside(body.Outline, from, along, 0);
        var over = Enumerable.Range(1, d.Frets).Count(n => Edge(n).X > bottom);
        var atLast = layout.AtEdge(layout.Fret(d.Frets), side).X;
        var front = seat.Z(atLast, face);
        var back = body.Outline.Contains(last) ? body.Back.Z(last.X, last.Y) : seat.Z(atLast, neckBack is null ? 0 : gluePlane + neckBack.Z(atLast, 0));
        return new(side, bottom, last.X, over, front - back, RoomAt(body.Outline.Loops[0], Edge(d.Frets - over), side));
    }

    /// <summary>Outward from a point on the neck's edge: past wood that lies against the neck, then through air to the next wood.</summary>
    private static double? RoomAt(Loop outline, Point2 edge, int side)
    {
        var outward = Segments.CrossingsAtX(outline, edge.X).Select(y => side * y - side * edge.Y).Where(y => y > 0).Order().ToArray();
        // An odd number of walls outside: the point itself lies in wood.
        var inWood = outward.Length % 2 == 1;
        var (start, next) = inWood ? (outward[0], 1) : (0, 0);
        return outward.Length > next ? outward[next] - start : null;
    }
}
