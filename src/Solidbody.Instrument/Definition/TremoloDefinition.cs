namespace Solidbody.Instrument;

/// <summary>A bridge whose block goes through the body to springs in the back. All x from the scale line, toward the tail.</summary>
/// <param name="OpeningFrom">Opening in the front for the block, front edge.</param>
/// <param name="OpeningTo">Rear edge.</param>
/// <param name="OpeningWidth">Across.</param>
/// <param name="Swing">How much further toward the tail the block's well reaches in the back.</param>
/// <param name="SpringsFrom">Spring cavity in the back: the wall that takes the claw's screws.</param>
/// <param name="SpringsWidth">Across.</param>
/// <param name="Depth">Of spring cavity and well, from the back.</param>
/// <param name="ClawScrewsApart">Two screws, across.</param>
/// <param name="ClawPilot">Holes for them, by hand.</param>
/// <param name="ClawDepth">From the wall toward the neck.</param>
/// <param name="LedgeWidth">What the cover lies on, all round.</param>
/// <param name="LedgeDepth">From the back; 0 where the cover lies on the back itself.</param>
public sealed record TremoloDefinition(double OpeningFrom, double OpeningTo, double OpeningWidth, double Swing, double SpringsFrom, double SpringsWidth, double Depth,
    double ClawScrewsApart, double ClawPilot, double ClawDepth, double LedgeWidth, double LedgeDepth, CoverDefinition Cover)
{
    /// <summary>Inside corners of all its rooms, mm: a cutter of 6 mm reaches in.</summary>
    public const double CornerRadius = 4;
}
