using System.Collections.Immutable;
using Solidbody.Instrument.Necks;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>A string at pitch.</summary>
/// <param name="Length">Vibrating length open, mm.</param>
/// <param name="Pitch">Hz.</param>
/// <param name="UnitMass">kg/m.</param>
/// <param name="Tension">N.</param>
/// <param name="CoreDiameter">Of the wire that carries the pull, mm: the whole of a plain string, the core of a wound one; null when a wound string's core is not given.</param>
public sealed record StringPull(double Length, double Pitch, double UnitMass, double Tension, double? CoreDiameter)
{
    /// <summary>Of plain strings and cores, kg/m³.</summary>
    public const double SteelDensity = MusicWire.Density;

    /// <summary>Cross-section that carries the pull, mm².</summary>
    public double? Area => Math.PI / 4 * CoreDiameter * CoreDiameter;
    /// <summary>Stress in it, N/mm².</summary>
    public double? Stress => Tension / Area;

    /// <summary>Unit mass of a solid round wire, μ = ρ π d²/4, kg/m.</summary>
    /// <param name="diameter">mm.</param>
    /// <param name="density">kg/m³.</param>
    public static double SolidMass(double diameter, double density) => density * Math.PI / 4 * diameter * diameter * 1e-6;

    /// <summary>T = μ (2 L f)², the ideal string.</summary>
    /// <param name="s">The string.</param>
    /// <param name="length">Vibrating length, mm.</param>
    /// <param name="a4">Hz.</param>
    public static StringPull Of(StringDefinition s, double length, double a4)
    {
        ArgumentNullException.ThrowIfNull(s);
        var pitch = FretTable.Pitch(s.Note.Number, a4);
        var mass = s.UnitMass ?? SolidMass(s.Gauge, SteelDensity);
        var speed = 2 * length * 1e-3 * pitch;
        return new(length, pitch, mass, mass * speed * speed, s.IsWound ? s.Core : s.Gauge);
    }

    /// <summary>Every string's, from the lowest; empty when the file does not describe the strings.</summary>
    public static ImmutableArray<StringPull> All(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        var strings = Strings.Of(d);
        return d.Tuning is { } t ? [.. t.Strings.Select((s, i) => Of(s, strings.ScaleOf(i), t.A4))] : [];
    }
}
