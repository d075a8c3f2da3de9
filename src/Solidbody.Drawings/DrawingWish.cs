namespace Solidbody.Drawings;

/// <summary>What a person says about a drawing beside the drawing itself.</summary>
/// <param name="Pick">Only what has this id (SVG, with all below it) or lies on this layer (DXF); null takes everything.</param>
/// <param name="Unit">mm in one unit of the drawing, for a drawing that does not say its own; null when the person does not say either.</param>
/// <param name="Gap">Ends this near to each other are joined, mm.</param>
public sealed record DrawingWish(string? Pick = null, double? Unit = null, double Gap = DrawingWish.UsualGap)
{
    /// <summary>Rounding in a drawing of three decimals, with room; and the most that can be called an oversight. mm, common practice, no source.</summary>
    public const double UsualGap = 0.01, MostGap = 0.5;
}
