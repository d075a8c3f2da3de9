using Solidbody.Geometry;
using Solidbody.Machining.Toolpaths;

namespace Solidbody.Machining.Tests.Toolpaths;

/// <summary>Cutters and settings the tests share.</summary>
internal static class Given
{
    public static Cutter Flat(double diameter, bool plunges = false) => Make(CutterKind.UpSpiral, diameter) with { Plunges = plunges };
    public static Cutter Ball(double diameter) => Make(CutterKind.BallEnd, diameter);
    public static Cutter Tapered(double tipRadius, double halfAngle, double diameter) => Make(CutterKind.TaperedBallEnd, diameter) with { TipRadius = tipRadius, Angle = halfAngle };
    public static Cutter Drill(double diameter) => Make(CutterKind.Drill, diameter) with { Plunges = true, Angle = Math.PI * 118 / 180 };
    public static Cutter Roundover(double edge, double tip) => Make(CutterKind.Roundover, 2 * (edge + tip)) with { EdgeRadius = edge, TipRadius = tip };

    public static CutSettings Settings(Cutter cutter, double stepDown = 3, double? stepOver = null, double clearance = 30) => new()
    {
        Cutter = cutter,
        Feed = 40,
        PlungeFeed = 12,
        StepDown = stepDown,
        StepOver = stepOver ?? 0.4 * cutter.Diameter,
        Clearance = clearance,
    };

    private static Cutter Make(CutterKind kind, double diameter) => new()
    {
        Name = $"{kind} {diameter}",
        Kind = kind,
        Diameter = diameter,
        FluteLength = 60,
        OverallLength = 100,
        ShankDiameter = diameter,
        Flutes = 2,
        StickOut = 70,
    };
}
