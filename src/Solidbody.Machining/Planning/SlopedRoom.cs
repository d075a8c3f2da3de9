using Solidbody.Geometry;
using Solidbody.Machining.Feeds;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Planning;

/// <summary>A room whose floor slopes along x, laid frame: what flat cutters leave at its walls, and what would do instead.</summary>
internal sealed class SlopedRoom
{
    private readonly Region outline;

    /// <param name="region">The room, opened into the waste where it runs out of the outline.</param>
    /// <param name="floor">Its floor; not level.</param>
    /// <param name="outline">The part's.</param>
    public SlopedRoom(Region region, SlopedHeight floor, Region outline)
    {
        (Region, Floor, this.outline) = (region, floor, outline);
        var uphill = new Point2(Math.Sign(floor.Slope), 0);
        Strip = RegionFit.Walls(region, outline).Select(wall => FlatOnSlope.LeftAtWall(1, floor.Slope, -wall.Inward.Dot(uphill))).DefaultIfEmpty(0).Max();
        var (near, far) = (floor.Z(region.Bounds.X0, 0), floor.Z(region.Bounds.X1, 0));
        (Lowest, Highest) = (Math.Min(near, far), Math.Max(near, far));
    }

    public Region Region { get; }
    public SlopedHeight Floor { get; }
    public double Lowest { get; }
    public double Highest { get; }

    /// <summary>What a cutter of 1 mm radius leaves at the wall that suits it least, mm.</summary>
    private double Strip { get; }

    /// <summary>Of the slope, radians; positive.</summary>
    public double Angle => Math.Atan(Math.Abs(Floor.Slope));

    /// <summary>What a cutter leaves at the wall that suits it least, mm.</summary>
    public double LeftBy(Cutter cutter) => cutter.Radius * Strip;

    /// <summary>Widest cutter, by diameter, that leaves no more along the walls than may stand there.</summary>
    public double WidestCutter => 2 * PlanPractice.SlopeStrip / Strip;

    public bool Suits(Cutter cutter) => Angle <= PlanPractice.SteepestFloor && LeftBy(cutter) <= PlanPractice.SlopeStrip;

    /// <summary>Length of the floor in the part, mm.</summary>
    public double Length => Offsets.Intersection(Region, outline).Max(r => r.Bounds.Width);

    /// <summary>Thick end of a wedge that long with the floor's slope, its length measured along its sloping face, mm.</summary>
    public double Wedge => Length * Math.Sin(Angle);

    /// <summary>The most that roughing with any of these cutters leaves standing over the floor.</summary>
    public double SkinAfter(IEnumerable<Cutter> roughers) => PlanPractice.FloorLeave + roughers.Max(c => FlatOnSlope.LeftAtWall(c.Radius, Floor.Slope, -1));

    /// <summary>Everything but the skin on the floor; the walls down to that.</summary>
    public IEnumerable<Job.Step> Roughed(double top, int springPasses) =>
    [
        new("rough", new Work.ClearSlope(Region, Floor, top - Lowest, PlanPractice.RoughLeave, PlanPractice.FloorLeave)),
        new("walls", new Work.SlopeWalls(Region, Floor, top - Lowest, PlanPractice.FloorLeave, springPasses), new Bite(top - Lowest, PlanPractice.RoughLeave)),
    ];

    /// <summary>The floor, and the feet of the walls.</summary>
    public IEnumerable<Job.Step> Finished(double skin, int springPasses) =>
    [
        new("floor", new Work.SlopeFloor(Region, Floor, skin, PlanPractice.SlopeRidge, PlanPractice.RoughLeave)),
        new("foot of the walls", new Work.SlopeWalls(Region, Floor, skin, 0, springPasses), new Bite(skin, PlanPractice.RoughLeave)),
    ];
}
