using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Checks;

/// <summary>Where registration holes lie on the bed: the only places where a tip may pass the bed's allowance.</summary>
internal static class Dowels
{
    /// <summary>How far a cutter may reach out of its hole, mm: rounding of the text and of the packet's figures.</summary>
    private const double Play = 0.05;

    /// <summary>How deep a cutter may go below the spoilboard there, mm; 0 where it does not stay within a registration hole.</summary>
    public static double Depth(SetUp setUp, Point2 tip, double cutterRadius)
    {
        var deepest = 0.0;
        foreach (var hole in setUp.Registration)
            if (OnBed(setUp, hole).DistanceTo(tip) + cutterRadius <= hole.Diameter / 2 + Play) deepest = Math.Max(deepest, hole.Depth);
        return deepest;
    }

    public static Point2 OnBed(SetUp setUp, RegistrationHole hole) => setUp.Placement.ToWork(new(hole.Centre.X, hole.Centre.Y, 0)).Plan;
}
