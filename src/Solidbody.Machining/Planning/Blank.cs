using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Shop;

namespace Solidbody.Machining.Planning;

/// <summary>The wood a part is cut from, part frame, even about the centre line so that it turns over onto itself.</summary>
/// <param name="Box">Planed on both faces.</param>
/// <param name="First">First mark on the centre line: X0 Y0 of the programs, and a dowel hole where the part is turned over.</param>
/// <param name="Second">Second mark on the centre line.</param>
public sealed record Blank(Box3 Box, Point2 First, Point2 Second)
{
    /// <summary>How much waste a blank carries.</summary>
    internal enum Waste { Usual, Ample, Least }

    /// <summary>The blank of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="groove">Width of the groove round the outline: its cutter's diameter, mm.</param>
    /// <param name="holdDowns">Their dowels.</param>
    /// <param name="waste">Usual; more, where screws find no room; or as little as dowels and rails allow, for a bed that is short.</param>
    internal static Blank Of(Part part, double groove, HoldDowns holdDowns, Waste waste)
    {
        var dowel = holdDowns.DowelDiameter / 2;
        var mark = groove + PlanPractice.LandAtDowel + dowel;
        var least = mark + dowel + PlanPractice.LandAtEnd;
        var (end, side, above, below) = part.Name switch
        {
            "body" => (Math.Max(PlanPractice.BodyMargin, least), PlanPractice.BodyMargin, 0.0, 0.0),
            "neck" => (Math.Max(PlanPractice.NeckEndRoom, least), groove + PlanPractice.NeckRail, 0.0, PlanPractice.NeckBackSkim),
            _ => (least, groove + PlanPractice.BoardMargin, PlanPractice.BoardSkim, 0.0),
        };
        if (waste == Waste.Ample) (end, side) = (end + PlanPractice.MoreForScrews, side + PlanPractice.MoreForScrews);
        if (waste == Waste.Least) (end, side) = (least, Math.Min(side, groove + PlanPractice.BoardMargin));

        var b = part.Bounds;
        var half = Math.Max(Math.Abs(b.Y0), Math.Abs(b.Y1)) + side;
        // The face that keeps its height is the datum side; the planed thickness is rounded up away from it.
        var thickness = b.Thickness + above + below;
        if (above + below > 0) thickness = Math.Ceiling(thickness / PlanPractice.PlaningStep - 1e-9) * PlanPractice.PlaningStep;
        var (z0, z1) = below > 0 ? (b.Z1 - thickness, b.Z1) : (b.Z0, b.Z0 + thickness);
        return new(new(b.X0 - end, -half, z0, b.X1 + end, half, z1), new(b.X0 - mark, 0), new(b.X1 + mark, 0));
    }
}
