using Solidbody.Geometry;

namespace Solidbody.Proof.Tests;

/// <summary>Cutters for tests; lengths mm, angles in degrees here only.</summary>
internal static class Cutters
{
    private static Cutter Any(CutterKind kind, double diameter) => new()
    {
        Name = $"{kind} {diameter}",
        Kind = kind,
        Diameter = diameter,
        FluteLength = 60,
        OverallLength = 100,
        ShankDiameter = diameter,
        Flutes = 2,
        StickOut = 80,
        Plunges = true,
    };

    public static Cutter Flat(double diameter) => Any(CutterKind.UpSpiral, diameter);
    public static Cutter Ball(double diameter) => Any(CutterKind.BallEnd, diameter);
    public static Cutter Tapered(double tipRadius, double degrees, double diameter) =>
        Any(CutterKind.TaperedBallEnd, diameter) with { TipRadius = tipRadius, Angle = degrees * Math.PI / 180 };
    public static Cutter Drill(double diameter, double degrees) => Any(CutterKind.Drill, diameter) with { Angle = degrees * Math.PI / 180 };
    public static Cutter Roundover(double tipRadius, double edgeRadius) =>
        Any(CutterKind.Roundover, 2 * (tipRadius + edgeRadius)) with { TipRadius = tipRadius, EdgeRadius = edgeRadius };
}
