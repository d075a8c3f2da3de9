using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Bought;

/// <summary>Whether a bought neck's measures agree with one another, and with the pocket made for it.</summary>
internal static class BoughtNeckChecks
{
    /// <summary>What must hold before a body can be drawn for it.</summary>
    public static IEnumerable<Finding> Foundations(InstrumentDefinition d, BoughtNeck neck)
    {
        var fromFret = FretTable.Position(d.Scale, d.Frets) + neck.LastFretToHeelEnd;
        if (!(Math.Abs(neck.NutToHeelEnd - fromFret) <= BoughtLimits.Measuring)) yield return BoughtFindings.MeasuresContradict(d.Frets, neck.NutToHeelEnd, fromFret, neck.NutToHeelEnd - fromFret);
        if (!(Math.Abs(2 * neck.NutToFret12 - d.Scale) <= BoughtLimits.Scale)) yield return BoughtFindings.ScaleContradicts(d.Scale, 2 * neck.NutToFret12);
        if (NeckJoint.Of(d) is var joint && !(joint.PocketCorner <= joint.MostCorner)) yield return PocketFindings.CornerTooLarge(joint.PocketCorner, joint.MostCorner);
    }

    /// <summary>A round corner of radius r stands (√2 − 1) r inside its sharp one; the pocket's sharp corner lies √2 times the clearance beyond the heel's.</summary>
    public static IEnumerable<Finding> Fit(InstrumentDefinition d, BoughtNeck neck)
    {
        var joint = NeckJoint.Of(d);
        var wood = (Math.Sqrt(2) - 1) * (joint.PocketCorner - neck.HeelCorner) - Math.Sqrt(2) * joint.Clearance;
        if (!(wood <= 0)) yield return BoughtFindings.CornersInTheWay(joint.PocketCorner, neck.HeelCorner, wood);
    }
}
