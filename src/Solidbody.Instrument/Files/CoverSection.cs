using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>A table such as <c>[body.controls.cover]</c>: the plate over a room in the back. Common practice, no source.</summary>
static class CoverSection
{
    /// <summary>Plate of 2 mm with foil under it, a quarter of a millimetre free all round; a 3 mm screw's pilot in hard and soft wood.</summary>
    const double Gap = 0.25, Thickness = 2, Lining = 0.1, Pilot = 2.5, PilotDepth = 10;

    public static CoverDefinition Read(TableReader cover, int screws) => new(
        cover.Length("gap", 0, 2, Gap, "between plate and ledge, all round"),
        cover.Length("thickness", 0.5, 6, Thickness, "of the plate"),
        cover.Length("lining", 0, 1, Lining, "shielding foil or paint under the plate"),
        cover.Count("screws", 0, 12, screws, "spread evenly along the middle of the ledge; 0 is none"),
        cover.Length("pilot", 1, 5, Pilot, "hole for a screw"),
        cover.Length("pilot_depth", 3, 25, PilotDepth, "from the ledge"));
}
