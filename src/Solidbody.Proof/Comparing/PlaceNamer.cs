using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>Says in words where on a part a point lies.</summary>
internal sealed class PlaceNamer(Part part)
{
    /// <summary>A feature farther away than this, mm, is not named.</summary>
    private const double Near = 3;

    /// <summary><c>body, front, neck pocket, x 412.00 y 18.50</c>.</summary>
    public string Place(Point2 p, Side side) =>
        string.Create(CultureInfo.InvariantCulture, $"{part.Name}, {(side == Side.Front ? "front" : "back")}, {Feature(p, side)}, x {p.X:0.00} y {p.Y:0.00}");

    /// <summary>The nearest feature that opens to a side, the smaller of two that share the point; the outline, or the face itself.</summary>
    public string Feature(Point2 p, Side side)
    {
        var (name, distance, size) = ("face", Near, double.PositiveInfinity);
        void Offer(string candidate, double d, double area)
        {
            d = Math.Max(0, d);
            if (d < Near && (d < distance || (d == distance && area < size))) (name, distance, size) = (candidate, d, area);
        }
        foreach (var pocket in part.Pockets)
            if (pocket.From == side || pocket.Through) Offer(pocket.Name, pocket.Region.SignedDistance(p, Near), pocket.Region.Area);
        foreach (var hole in part.Holes)
            if (hole.From == side || hole.Through) Offer(hole.Name, p.DistanceTo(hole.Centre) - hole.Diameter / 2, Math.PI / 4 * hole.Diameter * hole.Diameter);
        if (side == Side.Front)
            foreach (var slot in part.Slots) Offer(slot.Name, ToLine(p, slot.A, slot.B) - slot.Width / 2, slot.A.DistanceTo(slot.B) * slot.Width);
        foreach (var flat in part.Flats)
            if (flat.From == side) Offer(flat.Name, flat.Region.SignedDistance(p, Near), flat.Region.Area);
        foreach (var zone in part.CarvedZones)
            if (zone.From == side) Offer(zone.Name, zone.Region.SignedDistance(p, Near), zone.Region.Area);
        foreach (var ledge in part.Ledges)
            if (ledge.From == side) Offer(ledge.Name, Math.Abs(ledge.Inside.SignedDistance(p, Near)), 0);
        Offer("outline", Math.Abs(part.Outline.SignedDistance(p, Near)), 0);
        return name;
    }

    private static double ToLine(Point2 p, Point2 a, Point2 b)
    {
        var ab = b - a;
        var t = Math.Clamp((p - a).Dot(ab) / ab.Dot(ab), 0, 1);
        return p.DistanceTo(a + t * ab);
    }
}
