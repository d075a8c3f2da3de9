using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The table <c>[body.binding]</c>: a strip in a ledge round the body's edge. Defaults are common practice, no source.</summary>
static class BindingSection
{
    /// <summary>A taller ledge would leave a tab, 3 mm of wood beside it, less than a quarter of what it stands in.</summary>
    const double Tallest = 8;

    public static BindingDefinition? Read(TableReader binding)
    {
        var definition = new BindingDefinition(
            binding.Flag("front", false, "true binds the front's edge"),
            binding.Flag("back", false, "true binds the back's edge"),
            binding.Choice("material", [("plastic", BindingKind.Plastic), ("fibre", BindingKind.Fibre), ("wood", BindingKind.Wood)], "plastic", "of the strip: how far it bends, and what it weighs"),
            binding.Length("height", 1, Tallest, 6, "of the strip, along the body's thickness: the ledge's depth"),
            binding.Length("thickness", 0.5, 6, 1.5, "of the strip, across the edge"),
            binding.Length("glue", 0, 0.5, 0, "room for glue behind the strip: the ledge is wider than the strip by this"));
        return definition.Front || definition.Back ? definition : null;
    }
}
