namespace Solidbody.Instrument;

/// <summary>How holes are drawn so that a drill can make them.</summary>
internal static class Drilling
{
    /// <summary>Point angle of the common drill, radians: 118°. Common practice, no source.</summary>
    public static readonly double PointAngle = double.DegreesToRadians(118);
    /// <summary>Spare depth beyond a drill's cone, mm: drills are measured to a tenth.</summary>
    private const double Spare = 0.1;
    /// <summary>How far two holes that meet from both faces overlap, mm; and how far a through hole goes beyond the far face.</summary>
    public const double Overlap = 1;

    /// <summary>Room below a blind hole's full depth for the drill's cone, mm.</summary>
    public static double Cone(double diameter) => diameter / 2 / Math.Tan(PointAngle / 2) + Spare;
}
