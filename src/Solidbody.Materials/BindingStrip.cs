namespace Solidbody.Materials;

/// <summary>What a binding is made of.</summary>
public enum BindingKind { Plastic, Fibre, Wood }

/// <summary>How far a strip of binding bends flatwise before it breaks, creases or springs off, and what it weighs.</summary>
/// <param name="Name">For people.</param>
/// <param name="Cold">Least inside radius as it comes, in thicknesses of the strip.</param>
/// <param name="Warmed">Least inside radius softened, in thicknesses of the strip.</param>
/// <param name="Softened">How it is softened.</param>
/// <param name="Density">kg/mm³.</param>
public sealed record BindingStrip(string Name, double Cold, double Warmed, string Softened, double Density)
{
    public const string Source = "common practice, no source";

    /// <summary>Radii: common practice, no source; a thickness T on an inside radius R is stretched by T/(2R + T), 2 % at 25 thicknesses, 14 % at 3. Densities from memory: ABS and celluloid 1.05 to 1.4 g/cm³.</summary>
    public static BindingStrip Of(BindingKind kind) => kind switch
    {
        BindingKind.Plastic => new("plastic", 25, 3, "with warm air", 1.2e-6),
        BindingKind.Fibre => new("fibre", 15, 8, "damp, with warm air", 1.2e-6),
        BindingKind.Wood => new("wood", 40, 12, "on a hot bending iron", 0.7e-6),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such binding."),
    };
}
