using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>How measures are taken: directions, tolerance, and the calipers for holes.</summary>
internal static class Take
{
    public static readonly Point2 AlongX = new(1, 0), AlongY = new(0, 1);
    /// <summary>± mm within which a cut part must agree with the instrument file.</summary>
    public const double Tolerance = 0.1;
    /// <summary>± mm on the fall of a sloping floor, where both depths are taken with the same tool: over a neck pocket 0.05°, at the bridge about 0.15 mm; common practice, no source.</summary>
    public const double Fall = 0.05;
    /// <summary>Widths at an end are taken this far inside it, mm: the end's own edge may be rounded by a tab or a cutter.</summary>
    public const double InsideEnd = 2;

    /// <summary>x of a hole's middle.</summary>
    public static Caliper HoleX(Hole hole, double z) => new Caliper.InsideCentre(new(0, hole.Centre.Y), AlongX, hole.Centre.X, z, hole.Diameter);
    /// <summary>y of a hole's middle, positive to the treble side.</summary>
    public static Caliper HoleY(Hole hole, double z) => new Caliper.InsideCentre(new(hole.Centre.X, 0), AlongY, hole.Centre.Y, z, hole.Diameter);
    public static Caliper HoleDiameter(Hole hole, double z) => new Caliper.Inside(hole.Centre, AlongX, z, hole.Diameter);

    /// <summary>Position, and diameter, of a hole.</summary>
    public static IEnumerable<Measure> Hole(Hole hole, double z)
    {
        yield return new($"{hole.Name} from the nut", hole.Centre.X, Tolerance, HoleX(hole, z));
        yield return new($"{hole.Name} from the centre line", hole.Centre.Y, Tolerance, HoleY(hole, z));
        yield return new($"diameter of {hole.Name}", hole.Diameter, Tolerance, HoleDiameter(hole, z));
    }
}
