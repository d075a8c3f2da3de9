using System.Collections.Immutable;
using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace Solidbody.Geometry;

/// <summary>Offsets and combinations of regions: the one place where the polygon library is used and its knobs are set.</summary>
public static class Offsets
{
    private static readonly NtsGeometryServices Services =
        new(NetTopologySuite.Geometries.Implementation.CoordinateArraySequenceFactory.Instance, new PrecisionModel(), 0, GeometryOverlay.NG, new CoordinateEqualityComparer());
    private static readonly GeometryFactory Factory = Services.CreateGeometryFactory();

    /// <summary>All points within <paramref name="distance"/> of the region (outward, rounded), or at least that deep inside it (inward, negative).</summary>
    /// <param name="region">The region; its own edges' accuracy carries over.</param>
    /// <param name="distance">Offset d, mm; negative is inward.</param>
    /// <param name="tolerance">Greatest sagitta of the round joins, mm.</param>
    /// <returns>The separate regions left, largest first; none when nothing is left.</returns>
    /// <remarks>Quadrant segments follow from d and the tolerance; the library's own thinning of its input is switched off (its default costs up to 1 % of d).</remarks>
    public static ImmutableArray<Region> Of(Region region, double distance, double tolerance = Tolerances.Flattening)
    {
        ArgumentNullException.ThrowIfNull(region);
        if (Math.Abs(distance) < Tolerances.Geometry) return [region];
        var quadrant = Math.Clamp(Shapes.ChordsFor(Math.Abs(distance), Math.PI / 2, tolerance), 4, 128);
        var how = new BufferParameters(quadrant, EndCapStyle.Round, JoinStyle.Round, 5) { SimplifyFactor = 1e-6 };
        var left = FromLibrary(ToLibrary(region).Buffer(distance, how));
        return distance > 0 ? left : [.. left.Where(r => LiesDeep(r, region, -distance))];
    }

    /// <summary>Share of an offset's distance by which the library's curves may be off, with room to spare (7e-4 measured), and by which a splinter is known.</summary>
    private const double LibraryError = 0.01;

    /// <summary>Whether a region left by an inward offset lies where it should: the library now and then leaves a splinter, hundredths of a millimetre wide, outside it.</summary>
    private static bool LiesDeep(Region left, Region region, double depth) =>
        -region.SignedDistance(left.Loops[0].Points[0]) >= depth * (1 - LibraryError) - Tolerances.Flattening;

    public static ImmutableArray<Region> Union(IEnumerable<Region> regions) =>
        FromLibrary(regions.Select(ToLibrary).Aggregate((NetTopologySuite.Geometries.Geometry)Factory.CreatePolygon(), (a, b) => a.Union(b)));
    public static ImmutableArray<Region> Difference(Region a, Region b) => FromLibrary(ToLibrary(a).Difference(ToLibrary(b)));
    public static ImmutableArray<Region> Intersection(Region a, Region b) => FromLibrary(ToLibrary(a).Intersection(ToLibrary(b)));

    private static NetTopologySuite.Geometries.Geometry ToLibrary(Region region)
    {
        var outers = region.Loops.Where(l => l.SignedArea > 0).Select(l => Factory.CreatePolygon(Ring(l)));
        var holes = region.Loops.Where(l => l.SignedArea < 0).Select(l => Factory.CreatePolygon(Ring(l)));
        var whole = outers.Aggregate((NetTopologySuite.Geometries.Geometry)Factory.CreatePolygon(), (a, b) => a.IsEmpty ? b : a.Union(b));
        return holes.Aggregate(whole, (a, b) => a.Difference(b));
    }

    private static LinearRing Ring(Loop loop) =>
        Factory.CreateLinearRing([.. loop.Points.Append(loop.Points[0]).Select(p => new Coordinate(p.X, p.Y))]);

    private static ImmutableArray<Region> FromLibrary(NetTopologySuite.Geometries.Geometry g) =>
        [.. Enumerable.Range(0, g.NumGeometries).Select(g.GetGeometryN).OfType<Polygon>().Where(p => p.Area > Tolerances.Geometry)
            .OrderByDescending(p => p.Area)
            .Select(p => new Region(p.InteriorRings.Select(r => LoopOf(r).Clockwise).Prepend(LoopOf(p.ExteriorRing).CounterClockwise)))];

    private static Loop LoopOf(LineString ring) => Loop.Of(ring.Coordinates.Select(c => new Point2(c.X, c.Y)));
}
