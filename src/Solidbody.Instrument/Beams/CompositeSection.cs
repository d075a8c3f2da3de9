namespace Solidbody.Instrument.Beams;

/// <summary>One material's share of a section.</summary>
/// <param name="Modulus">E along the beam, N/mm².</param>
public readonly record struct Member(double Modulus, AreaMoments Area);

/// <summary>A section of several materials bent as one: plane sections stay plane.</summary>
/// <param name="AxialStiffness">EA, N.</param>
/// <param name="Axis">Height of the neutral axis z₀ = Σ E A z / Σ E A, mm.</param>
/// <param name="BendingStiffness">EI = Σ E (I + A (z − z₀)²), N mm².</param>
/// <remarks>From memory, as any book on strength of materials has it (transformed sections).</remarks>
public readonly record struct CompositeSection(double AxialStiffness, double Axis, double BendingStiffness)
{
    public static CompositeSection Of(params ReadOnlySpan<Member> members)
    {
        var (ea, first, second) = (0.0, 0.0, 0.0);
        foreach (var (modulus, area) in members)
        {
            ea += modulus * area.Area;
            first += modulus * area.First;
            second += modulus * area.Second;
        }
        return new(ea, first / ea, second - first * first / ea);
    }

    /// <summary>Strain at a height; longer is positive.</summary>
    /// <param name="z">mm.</param>
    /// <param name="push">Pressing along the axis, N.</param>
    /// <param name="moment">Pressing the upper side, N mm.</param>
    public double Strain(double z, double push, double moment) => -push / AxialStiffness - moment / BendingStiffness * (z - Axis);
}
