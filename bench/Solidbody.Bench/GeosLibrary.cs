using System.Runtime.InteropServices;
using Solidbody.Geometry;

namespace Solidbody.Bench;

/// <summary>The polygon library GEOS through its C interface (Debian package libgeos-c1v5), to measure against; nothing but benches uses it.</summary>
internal static class GeosLibrary
{
    private const string Name = "libgeos_c.so.1";

    [DllImport(Name, EntryPoint = "GEOS_init_r")] private static extern nint Start();
    [DllImport(Name, EntryPoint = "GEOSCoordSeq_create_r")] private static extern nint CreateRow(nint session, uint size, uint dimensions);
    [DllImport(Name, EntryPoint = "GEOSCoordSeq_setXY_r")] private static extern int SetXY(nint session, nint row, uint index, double x, double y);
    [DllImport(Name, EntryPoint = "GEOSGeom_createLinearRing_r")] private static extern nint CreateRing(nint session, nint row);
    [DllImport(Name, EntryPoint = "GEOSGeom_createPolygon_r")] private static extern nint CreatePolygon(nint session, nint shell, nint[] holes, uint count);
    [DllImport(Name, EntryPoint = "GEOSBuffer_r")] private static extern nint Buffer(nint session, nint geometry, double width, int quadrantSegments);
    [DllImport(Name, EntryPoint = "GEOSGetNumCoordinates_r")] private static extern int CountCoordinates(nint session, nint geometry);
    [DllImport(Name, EntryPoint = "GEOSGeom_destroy_r")] private static extern void Destroy(nint session, nint geometry);

    private static readonly Lazy<nint> Session = new(Start);

    /// <summary>The region as the library's polygon; kept until the process ends.</summary>
    public static nint Polygon(Region region)
    {
        var rings = region.Loops.Select(Ring).ToArray();
        return CreatePolygon(Session.Value, rings[0], rings[1..], (uint)(rings.Length - 1));
    }

    /// <summary>Coordinates of the polygon offset by a distance, which is thrown away.</summary>
    public static int Offset(nint polygon, double distance, int quadrantSegments)
    {
        var moved = Buffer(Session.Value, polygon, distance, quadrantSegments);
        var count = CountCoordinates(Session.Value, moved);
        Destroy(Session.Value, moved);
        return count;
    }

    private static nint Ring(Loop loop)
    {
        var row = CreateRow(Session.Value, (uint)loop.Points.Length + 1, 2);
        for (var i = 0; i <= loop.Points.Length; i++)
            if (SetXY(Session.Value, row, (uint)i, loop.Points[i % loop.Points.Length].X, loop.Points[i % loop.Points.Length].Y) == 0)
                throw new InvalidOperationException("The polygon library took no coordinates.");
        return CreateRing(Session.Value, row);
    }
}
