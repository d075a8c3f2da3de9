namespace Solidbody.Instrument.Bodies;

/// <summary>How a drill must lie that enters the wall of a room from the room's own opening: its shank passes over the edge opposite.</summary>
/// <param name="Angle">From the face, radians; the drill goes away from the face as it goes into the wood.</param>
/// <param name="Depth">Of the hole's middle below the face where it enters the wall, mm.</param>
public sealed record DrillLie(double Angle, double Depth)
{
    /// <summary>The least angle.</summary>
    /// <param name="depth">h: of the hole's middle below the face, mm; h ≥ 0.</param>
    /// <param name="run">w: from the wall back to the opposite edge, along the drill in the plan, mm; w &gt; 0.</param>
    /// <param name="diameter">d of the drill, mm.</param>
    /// <remarks>The edge opposite lies w sin θ − h cos θ from the axis, which must be d/2: θ = atan(h/w) + asin(d / (2 √(w² + h²))). A room narrower than the drill lets it in upright only.</remarks>
    public static DrillLie Over(double depth, double run, double diameter)
    {
        var far = Math.Sqrt(run * run + depth * depth);
        return new(Math.Min(Math.PI / 2, Math.Atan2(depth, run) + Math.Asin(Math.Min(1, diameter / 2 / far))), depth);
    }

    /// <summary>Free length the drill needs so that its chuck stays above the face, mm.</summary>
    /// <param name="beyond">How far the bore goes on past the wall, in the plan, mm.</param>
    /// <param name="chuck">Diameter of the chuck, mm.</param>
    /// <remarks>At a distance s back from the wall along the axis the axis stands s sin θ − h above the face; the chuck's lower rim is (D/2) cos θ below that.</remarks>
    public double FreeLength(double beyond, double chuck) =>
        beyond / Math.Cos(Angle) + (Depth + chuck / 2 * Math.Cos(Angle)) / Math.Sin(Angle);
}
