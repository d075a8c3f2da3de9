using Solidbody.Geometry;
using Solidbody.Materials;

namespace Solidbody.Instrument;

/// <summary>A strip glued into a ledge all round the body's edge.</summary>
/// <param name="Front">Whether the front's edge is bound.</param>
/// <param name="Back">Whether the back's edge is bound.</param>
/// <param name="Kind">What it is made of.</param>
/// <param name="Height">Along the body's thickness.</param>
/// <param name="Thickness">Across the edge.</param>
/// <param name="Glue">Room behind it for the glue.</param>
public sealed record BindingDefinition(bool Front, bool Back, BindingKind Kind, double Height, double Thickness, double Glue)
{
    /// <summary>Of the ledge.</summary>
    public double Width => Thickness + Glue;

    public bool Binds(Side side) => side == Side.Front ? Front : Back;
}
