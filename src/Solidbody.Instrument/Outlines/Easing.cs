using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Outlines;

/// <summary>A discrete spiral leaving a station: control points whose curve has a stated radius at the station and straightens away from it.</summary>
/// <param name="Station">The control point at the station itself; both sides of a station share it.</param>
/// <param name="Points">P1 … Pn.</param>
/// <param name="Leg">Distance between neighbouring control points, mm.</param>
internal sealed record Easing(Point2 Station, ImmutableArray<Point2> Points, double Leg)
{
    /// <summary>Half-turn angle at the station of horns and cutaways, and of the shoulder's corner.</summary>
    public static readonly double Wide = double.DegreesToRadians(40), Narrow = double.DegreesToRadians(30);

    /// <param name="at">Where the curve passes.</param>
    /// <param name="heading">Its direction there, radians.</param>
    /// <param name="turn">Signed turn q until the last point, left positive.</param>
    /// <param name="radius">Radius at the station, mm.</param>
    /// <param name="count">Number of points n.</param>
    /// <param name="half">Half-turn angle T₀ at the station.</param>
    public static Easing From(Point2 at, double heading, double turn, double radius, int count, double half)
    {
        var (sin, cos) = Math.SinCos(half / 2);
        var leg = 2 * radius * sin / (cos * cos);
        var sign = turn > 0 ? 1 : -1;
        var station = at - sign * (leg * sin / 3) * Point2.Polar(heading).Left;
        var points = ImmutableArray.CreateBuilder<Point2>(count);
        var direction = heading + sign * half / 2;
        var p = station;
        for (var k = 1; k <= count; k++)
        {
            p += leg * Point2.Polar(direction);
            points.Add(p);
            // The rest of the turn is spread with weights n … 1, so that curvature falls away from the station.
            direction += sign * (Math.Abs(turn) - half / 2) * (count + 1 - k) / (count * (count + 1) / 2.0);
        }
        return new(station, points.MoveToImmutable(), leg);
    }

    public Point2 Last => Points[^1];
    public Easing Moved(Point2 by) => new(Station + by, [.. Points.Select(p => p + by)], Leg);
}
