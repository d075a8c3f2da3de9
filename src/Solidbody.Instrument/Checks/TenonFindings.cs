using System.Globalization;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with a neck that is glued into the body.</summary>
public static class TenonFindings
{
    private const string Place = "neck, tenon";

    public static Finding BoardHangsFree(double gap) =>
        new("TENON-01", Severity.Warns, Place, $"the board stands {Say.Mm(gap)} over the body beside the tenon", Say.AtMost(Limits.BoardOffBody), Limits.Practice, "make the pocket as deep as the heel is thick, or leave the tenon as wide as the board.") { Title = "the board hangs free beside the tenon" };

    public static Finding SmallStep(double step) =>
        new("TENON-02", Severity.Stops, Place, $"shoulders {Say.Mm(step)} wide", $"{Say.AtLeast(Tenon.Hollow)}, or none", Limits.OwnShapes, "narrow the tenon, or leave tenon_width out.") { Title = "the tenon's shoulders are too narrow for a cutter" };

    public static Finding LittleGlue(double area) =>
        new("TENON-03", Severity.Warns, Place, string.Create(CultureInfo.InvariantCulture, $"{area:0} mm² of glue faces"), string.Create(CultureInfo.InvariantCulture, $"at least {Limits.TenonGlue:0} mm²"), Limits.Practice, "lengthen, widen or deepen the tenon.") { Title = "little glue holds the neck" };

    public static Finding Loose(double gap) =>
        new("TENON-04", Severity.Warns, Place, $"{Say.Mm(gap)} between tenon and mortise, each side", Say.AtMost(Limits.GlueGap), Limits.Practice, "take less clearance: wood glue does not fill gaps.") { Title = "the tenon is loose for glue" };
}
