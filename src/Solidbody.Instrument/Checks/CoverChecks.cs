using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

internal static class CoverChecks
{
    /// <summary>The body's cover plates, right-handed.</summary>
    public static ImmutableArray<CoverPlate> Plates(InstrumentDefinition d, Part body) =>
        [.. new[] { ControlRooms.CoverOf(d.Body, body.Outline), TremoloRooms.Cover(d) }.OfType<CoverPlate>()];

    public static IEnumerable<Finding> Of(InstrumentDefinition d, ImmutableArray<CoverPlate> plates)
    {
        foreach (var plate in plates)
        {
            var (ledge, depth) = plate.Name == CoverPlate.OverControls ? (d.Body.Controls!.LedgeWidth, d.Body.Controls.LedgeDepth) : (d.Body.Tremolo!.LedgeWidth, d.Body.Tremolo.LedgeDepth);
            var cover = plate.Definition;
            // A plate on the back itself is not meant to lie flush.
            if (depth > 0 && depth - cover.Thickness - cover.Lining is var below && !(below >= 0 && below <= Limits.CoverBelow)) yield return CoverFindings.NotFlush(plate.Name, below);
            if (!(ledge - cover.Gap >= Limits.CoverBearing)) yield return CoverFindings.LittleToLieOn(plate.Name, ledge - cover.Gap);
            if (!(plate.Spacing <= Limits.CoverScrewSpacing)) yield return CoverFindings.ScrewsFarApart(plate.Name, plate.Spacing);
        }
    }
}
