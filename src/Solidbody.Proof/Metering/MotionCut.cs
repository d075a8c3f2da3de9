using Solidbody.Programs;

namespace Solidbody.Proof.Metering;

/// <summary>What one motion of a program took from the wood.</summary>
/// <param name="Motion">As the text says it, work frame.</param>
/// <param name="Volume">Wood taken, mm³ ≥ 0.</param>
/// <param name="Depth">Most it lowered a column by, mm ≥ 0: the depth of its bite.</param>
/// <param name="CutLength">Length over which it took anything, mm: at most the motion's own; the rest of it was air.</param>
/// <param name="Engagement">Flat-ended cutters: widest arc of the circumference that met wood at once, radians in [0, π]: π in a full slot, acos(1 − a/R)
/// beside a strip of width a. 0 for a motion straight down, and for cutters of other forms. See <see cref="WoodMeter"/> for how sure it is.</param>
public readonly record struct MotionCut(Motion Motion, double Volume, double Depth, double CutLength, double Engagement)
{
    /// <summary>Of the motion's length, the part in which it took nothing: 0 to 1.</summary>
    public double AirShare => Motion.Length > 0 ? Math.Clamp(1 - CutLength / Motion.Length, 0, 1) : 0;

    /// <summary>Whether it goes down while it cuts: a plunge, a ramp, a helix. Its engagement is an entry's, not a level cut's.</summary>
    public bool Descends => Motion.To.Z < Motion.From.Z - Geometry.Tolerances.Output;
}
