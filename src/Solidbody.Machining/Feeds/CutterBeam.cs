using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Machining.Feeds;

/// <summary>A cutter as a stepped beam, clamped where the collet ends: the fluted part, then the shank. Closed form.</summary>
/// <remarks>
/// Bending after Euler and Bernoulli by the unit load: tip's deflection = F·∫ (x − a)·x/(E·I(x)) dx from a to the stick-out, x from the tip, F at a.
/// I = π·d⁴/64; the fluted part counts as a round bar of <see cref="CoreShare"/> of its diameter. The collet counts as rigid; shear is left out (under 3 % from four diameters of stick-out on).
/// </remarks>
public sealed class CutterBeam
{
    /// <summary>Diameter of a round bar that bends like the fluted part, over the cutting diameter. Kops and Vo, CIRP Annals 39 (1990) 93–96, from memory: about 0.8.</summary>
    public const double CoreShare = 0.8;

    /// <summary>A stretch of the beam: x from the tip, mm, and its diameter at both ends; straight between.</summary>
    private readonly record struct Section(double From, double To, double DiameterFrom, double DiameterTo)
    {
        public double Slope => (DiameterTo - DiameterFrom) / (To - From);
        public double DiameterAt(double x) => DiameterFrom + Slope * (x - From);
    }

    private readonly ImmutableArray<Section> sections;
    private readonly double stiffness;

    /// <param name="cutter">Flutes no longer than the stick-out.</param>
    public CutterBeam(Cutter cutter)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        stiffness = CutterMaterial.Of(cutter.Material).Stiffness.Value;
        sections = [.. Sections(cutter).Where(s => s.To > s.From)];
    }

    private static IEnumerable<Section> Sections(Cutter c)
    {
        var flutes = Math.Min(c.FluteLength, c.StickOut);
        var core = CoreShare * c.Diameter;
        if (c.Kind == CutterKind.TaperedBallEnd)
        {
            // The cone carried on to the tip is thinner than the ball there: on the safe side.
            var tip = 2 * c.TipRadius * (Math.Cos(c.Angle) - (1 - Math.Sin(c.Angle)) * Math.Tan(c.Angle));
            var cone = Math.Min(flutes, (c.Diameter - tip) / 2 / Math.Tan(c.Angle));
            var top = tip + 2 * cone * Math.Tan(c.Angle);
            yield return new(0, cone, CoreShare * tip, CoreShare * top);
            yield return new(cone, flutes, core, core);
        }
        else
        {
            var waist = c.Kind == CutterKind.Roundover ? CoreShare * DrivenCutter.EdgeDiameterOf(c) : core;
            yield return new(0, flutes, waist, waist);
        }
        yield return new(flutes, c.StickOut, c.ShankDiameter, c.ShankDiameter);
    }

    /// <summary>How far the tip gives way for each newton that pushes sideways.</summary>
    /// <param name="at">a, the push's distance from the tip, mm; 0 to the stick-out.</param>
    /// <returns>mm/N; falls as <paramref name="at"/> grows.</returns>
    public double Compliance(double at) => 64 / (Math.PI * stiffness) * sections.Sum(s => Bend(s, at));

    /// <summary>How far the tip gives way for each newton of a push spread evenly over a bite from the tip up.</summary>
    /// <param name="depth">Of the bite, mm; 0 to the flute length.</param>
    /// <returns>mm/N. Simpson's rule, exact for straight flutes: within them the compliance is a cubic of the push's place.</returns>
    public double SpreadCompliance(double depth) => (Compliance(0) + 4 * Compliance(depth / 2) + Compliance(depth)) / 6;

    /// <summary>∫ (x − a)·x/d⁴ dx over the section from a on.</summary>
    private static double Bend(Section s, double a)
    {
        var from = Math.Max(s.From, a);
        if (from >= s.To) return 0;
        if (s.DiameterTo == s.DiameterFrom)
            return (Math.Pow(s.To, 3) / 3 - a * s.To * s.To / 2 - (Math.Pow(from, 3) / 3 - a * from * from / 2)) / Math.Pow(s.DiameterFrom, 4);
        // With d = p + m·x, x = (d − p)/m: (x − a)·x dx/d⁴ = (d² − (2p + m·a)·d + p·(p + m·a))/(m³·d⁴) dd.
        var (m, p) = (s.Slope, s.DiameterAt(0));
        double Whole(double d) => -1 / d + (2 * p + m * a) / (2 * d * d) - p * (p + m * a) / (3 * d * d * d);
        return (Whole(s.DiameterTo) - Whole(s.DiameterAt(from))) / (m * m * m);
    }

    /// <summary>Greatest bending stress in it for each newton that pushes sideways: σ = 32·(x − a)/(π·d³), greatest at a section's end or, in a cone, where d = 3·m·(x − a).</summary>
    /// <param name="at">a, the push's distance from the tip, mm.</param>
    /// <returns>N/mm² for each N.</returns>
    public double Stress(double at) => sections.Max(s =>
    {
        double At(double x) => x <= at ? 0 : 32 * (x - at) / (Math.PI * Math.Pow(s.DiameterAt(x), 3));
        var inside = s.Slope == 0 ? s.To : Math.Clamp((s.DiameterAt(0) + 3 * s.Slope * at) / (2 * s.Slope), s.From, s.To);
        return Math.Max(At(s.To), Math.Max(At(inside), At(s.From)));
    });
}
