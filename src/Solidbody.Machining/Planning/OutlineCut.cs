using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Machining.Planning;

/// <summary>Which cutters free a part from its blank, and from how many sides.</summary>
/// <param name="Cutters">Best first; empty when none can.</param>
/// <param name="FrontDepth">Depth cut from the front first, mm; 0 when the last set-up cuts all of it.</param>
internal sealed record OutlineCut(ImmutableArray<Cutter> Cutters, double FrontDepth)
{
    /// <summary>The widest cutter that follows the outline and reaches through; where none does, half from each side with a little overlap.</summary>
    /// <param name="part">The part.</param>
    /// <param name="thickness">Of its blank, mm.</param>
    /// <param name="rack">The shop's cutters.</param>
    /// <param name="above">What stands on the blank beside the cut, mm: screw heads the collet must pass.</param>
    /// <param name="overshoot">Into the spoilboard, mm.</param>
    /// <param name="bothSides">Whether the part is turned over.</param>
    public static OutlineCut Of(Part part, double thickness, CutterRack rack, double above, double overshoot, bool bothSides)
    {
        var around = rack.Flat.Where(c => RegionFit.Around(part.Outline, c.Radius)).ToList();
        var through = Reaching(around, thickness + overshoot, above);
        if (!through.IsEmpty || !bothSides) return new(through, 0);
        var half = (thickness + PlanPractice.HalvesOverlap) / 2;
        return new(Reaching(around, half, above), half);
    }

    /// <summary>Only the thinnest of the cutters: its narrow groove wants less waste.</summary>
    public OutlineCut Narrow => this with { Cutters = [Cutters.MinBy(c => c.Diameter)!] };

    /// <summary>Cutters whose flutes span the depth where there are any.</summary>
    private static ImmutableArray<Cutter> Reaching(List<Cutter> cutters, double depth, double above)
    {
        var able = cutters.Where(c => CutterRack.Reaches(c, depth, depth + above)).ToList();
        if (able.Any(c => c.FluteLength >= depth)) able.RemoveAll(c => c.FluteLength < depth);
        return CutterRack.NotMuchThinner(able);
    }
}
