using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Programs.Reading;

internal sealed partial class Interpreter
{
    /// <summary>Slack for the last bits of the radii, mm, so that a difference of exactly the rule passes.</summary>
    private const double Rounding = 1e-9;

    /// <summary>The arc's centre, or null after telling why there is none.</summary>
    private Point2? ArcCentre(Block block, WorkPoint target)
    {
        var hasOffset = block.Has('I') || block.Has('J');
        if (block.Has('R') == hasOffset)
        {
            TellMissing(block, block.Has('R') ? block.Column('R') : FirstAxisColumn(block), hasOffset ? "an arc with both R and I or J" : "an arc without a centre",
                "either I and J or R", hasOffset ? "keep one of them" : "write I and J from the arc's start to its centre");
            return null;
        }
        return hasOffset ? CentreForm(block, target) : RadiusForm(block, target);
    }

    /// <summary>I and J run from the start to the centre, whatever the distance mode; one left out is 0 (NISTIR 6556, section 3.5.3.2, from memory).</summary>
    private Point2? CentreForm(Block block, WorkPoint target)
    {
        var unit = _millimetresPerUnit!.Value;
        var centre = _at.Plan + new Point2(block.Has('I') ? block['I'] * unit : 0, block.Has('J') ? block['J'] * unit : 0);
        var (begin, end) = ((_at.Plan - centre).Length, (target.Plan - centre).Length);
        var allowed = ArcRule.Difference(unit != 1);
        var column = block.Has('I') ? block.Column('I') : block.Column('J');
        if (!(begin > 0))
            TellMissing(block, column, "an arc whose centre is its start", "a radius above 0", "write I and J from the arc's start to its centre");
        else if (!(Math.Abs(begin - end) <= allowed + Rounding))
            TellMissing(block, column, $"the arc's radius is {Text(begin)} mm at its start and {Text(end)} mm at its end", $"radii that differ by at most {Text(allowed)} mm", "mend I and J or the end");
        else return centre;
        return null;
    }

    /// <summary>
    /// The centre lies on the chord's perpendicular bisector, √(R² − (c/2)²) from its middle: for G3 and R &gt; 0 to the left of the way
    /// from start to end; R &lt; 0 (an arc over half a turn) and G2 each change the side (NISTIR 6556, section 3.5.3.1, from memory).
    /// </summary>
    private Point2? RadiusForm(Block block, WorkPoint target)
    {
        var unit = _millimetresPerUnit!.Value;
        var radius = block['R'] * unit;
        var chord = target.Plan - _at.Plan;
        var half = chord.Length / 2;
        if (!(half > 0))
        {
            TellMissing(block, block.Column('R'), "an arc by its radius that ends where it begins", "R with an end that differs from the start", "write a whole turn with I and J");
            return null;
        }
        var size = Math.Abs(radius);
        if (!(half <= size + ArcRule.Difference(unit != 1)))
        {
            TellMissing(block, block.Column('R'), $"the radius {Text(size)} mm does not reach the end", $"R of at least {Text(half)} mm, half the distance", "mend R or the end");
            return null;
        }
        var height = Math.Sqrt(Math.Max(0, (size - half) * (size + half)));
        var side = (_motionWord == 3) == (radius > 0) ? 1 : -1;
        return _at.Plan + 0.5 * chord + side * height * chord.Left.Unit;
    }

    private static string Text(double mm) => mm.ToString("0.#####", CultureInfo.InvariantCulture);
}
