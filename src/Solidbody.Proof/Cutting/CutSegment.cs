namespace Solidbody.Proof.Cutting;

/// <summary>One straight piece of a cutter's path, seen from the surface it lowers: x and y are the part's own, z points out of that surface
/// (the part's z for the front, its negative for the back). mm.</summary>
/// <param name="X0">Where the tip starts.</param>
/// <param name="Y0">Where the tip starts.</param>
/// <param name="Z0">Where the tip starts.</param>
/// <param name="X1">Where it ends.</param>
/// <param name="Y1">Where it ends.</param>
/// <param name="Z1">Where it ends.</param>
/// <param name="Behind">How far behind the start, along the path, columns must be looked at; the cutter's radius for a whole end.</param>
/// <param name="Ahead">The same beyond the end.</param>
/// <param name="Line">Line of the program text.</param>
/// <param name="IsRapid">Whether it belongs to a rapid.</param>
internal readonly record struct CutSegment(double X0, double Y0, double Z0, double X1, double Y1, double Z1, double Behind, double Ahead, int Line, bool IsRapid)
{
    /// <summary>Shorter than this in the plan, a move is a plunge: far below a program's resolution.</summary>
    public const double PlungeLength = 1e-7;

    public double PlanLength => Math.Sqrt((X1 - X0) * (X1 - X0) + (Y1 - Y0) * (Y1 - Y0));
    public double LowestZ => Math.Min(Z0, Z1);
}
