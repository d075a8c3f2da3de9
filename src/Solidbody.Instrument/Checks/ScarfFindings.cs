using System.Globalization;
using Solidbody.Findings;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Checks;

/// <summary>What can be wrong with the joint of an angled headstock.</summary>
public static class ScarfFindings
{
    private const string Place = "neck, scarf joint";

    public static Finding Layout(ScarfJoint j)
    {
        ArgumentNullException.ThrowIfNull(j);
        return new("SCARF-01", Severity.Notes, Place, string.Create(CultureInfo.InvariantCulture,
            $"sawn at {double.RadiansToDegrees(j.CutAngle):0.00}°, slope {Say.Mm(j.CutLength)} long; line {Say.Mm(Math.Abs(j.LineAt))} {(j.LineAt < 0 ? "under the board from its end" : "behind the board's end")}; pieces {Say.Mm(j.ShaftPiece)} and {Say.Mm(j.HeadPiece)} without waste; {j.GlueArea:0} mm² glued in the finished neck"),
            "for the layout", "trigonometry, docs/checks/SCARF-01.md", "lay the joint out by these figures; cut both pieces longer by what the saw and the clamps need.")
        { Title = "how the scarf joint is laid out" };
    }

    public static Finding Short(double length) =>
        new("SCARF-02", Severity.Warns, Place, $"{Say.Mm(length)} of glue face on the centre line of the finished neck", Say.AtLeast(Limits.ScarfLength), Limits.Practice, "take less angle, a thicker neck or headstock, or bring the line to the other place.") { Title = "the scarf joint is short" };

    public static Finding LineAtNut(double at, double behind) =>
        new("SCARF-03", Severity.Warns, Place, $"its line comes out {Say.Mm(at)} behind the board's end", $"under the board, or more than {Say.Mm(behind)} behind its end", Limits.Practice, "take thicker stock or a shorter access, or bring the line to the other place.") { Title = "the scarf's line falls under the nut or the rod's access" };

    public static Finding AtAccess() =>
        new("SCARF-04", Severity.Warns, Place, "the room for the rod's adjuster cuts through the glue face", "below its floor, or away from it", Limits.Practice, "take thicker stock or a shallower channel, or bring the line to the other place.") { Title = "the rod's access cuts the scarf joint" };
}
