using Solidbody.Geometry;

namespace Solidbody.Instrument.Outlines;

/// <summary>Three control points that put a uniform cubic B-spline's knot exactly on a station, with a stated tangent and curvature.</summary>
/// <param name="Before">A = S − aT − dN.</param>
/// <param name="Middle">B = S + (a−c)/4 T + d/2 N.</param>
/// <param name="After">C = S + cT − dN.</param>
/// <param name="Curvature">k = 12 d / (a+c)², 1/mm, positive where the outline bulges along N.</param>
internal readonly record struct StationTriple(Point2 Before, Point2 Middle, Point2 After, double Curvature)
{
    /// <summary>Longest leg as a multiple of the other one.</summary>
    private const double LegRatio = 1.6;

    /// <param name="station">S.</param>
    /// <param name="tangent">Unit tangent T.</param>
    /// <param name="normal">Outward unit normal N.</param>
    /// <param name="before">Wanted leg a, mm; clipped to 1.6 c.</param>
    /// <param name="after">Wanted leg c, mm; clipped to 1.6 a.</param>
    /// <param name="curvature">Wanted k.</param>
    /// <param name="most">Bound on the size of d, mm: keeps the polygon free of extra turns.</param>
    public static StationTriple At(Point2 station, Point2 tangent, Point2 normal, double before, double after, double curvature, double most)
    {
        var (a, c) = (Math.Min(before, LegRatio * after), Math.Min(after, LegRatio * before));
        var d = Math.Max(-most, Math.Min(most, curvature * (a + c) * (a + c) / 12));
        return new(station - a * tangent - d * normal, station + (a - c) / 4 * tangent + d / 2 * normal, station + c * tangent - d * normal, 12 * d / ((a + c) * (a + c)));
    }
}
