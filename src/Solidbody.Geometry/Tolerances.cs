namespace Solidbody.Geometry;

/// <summary>The lengths below which the tool calls two things one, mm, each with its reason.</summary>
public static class Tolerances
{
    /// <summary>Two points nearer than this are one point: far below any cutter, far above rounding at 1 m.</summary>
    public const double Geometry = 1e-6;
    /// <summary>Greatest distance between a curve and the chords that stand for it.</summary>
    public const double Flattening = 0.005;
    /// <summary>Greatest distance between chords and the arcs fitted to them: a chord stands off its own curve by <see cref="Flattening"/>, so its arc stands off it by that, and a little.</summary>
    public const double Fitting = 1.2 * Flattening;
    /// <summary>Resolution of the program text; what a small router's controller takes.</summary>
    public const double Output = 0.001;
    /// <summary>Deepest cut into the finished part that a proof lets pass.</summary>
    public const double Gouge = 0.05;
}
