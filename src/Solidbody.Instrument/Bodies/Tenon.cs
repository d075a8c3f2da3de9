using Solidbody.Instrument.Fretboards;

namespace Solidbody.Instrument.Bodies;

/// <summary>The heel of a set neck, when it is narrower than the board: a parallel tenon with a shoulder on either side. Plan, mm.</summary>
internal static class Tenon
{
    /// <summary>Radius of the hollow between shoulder and tenon: an outline cutter of 12 mm follows it. The mortise's mouth is rounded to match.</summary>
    public const double Hollow = 6.6;
    /// <summary>The mouth's rounding begins this far before the shoulder line, so that the two never share an edge.</summary>
    public const double BeforeShoulder = 0.1;

    /// <summary>Half its width; null where the heel is as wide as the board over it.</summary>
    public static double? HalfWidth(InstrumentDefinition d) => d.Neck is { Joint: JointKind.Set, Heel.TenonWidth: { } width } ? width / 2 : null;

    /// <summary>Half width of the neck's wood at x.</summary>
    public static double NeckHalfWidth(InstrumentDefinition d, double x) =>
        HalfWidth(d) is { } half && x > ShoulderX(NeckJoint.Of(d)) ? half : FretboardMaker.HalfWidth(d, x);

    /// <summary>x of the neck's shoulders: they stand off the body by the joint's clearance.</summary>
    public static double ShoulderX(NeckJoint joint) => joint.ShoulderX - BeforeShoulder - joint.Clearance;

    /// <summary>Glue faces of a set neck in its mortise, mm²: the tenon's underside and its two cheeks.</summary>
    public static double GlueArea(InstrumentDefinition d)
    {
        var (joint, depth) = (NeckJoint.Of(d), d.Body.Pocket.Depth);
        var width = NeckHalfWidth(d, joint.ShoulderX + 1) + NeckHalfWidth(d, joint.HeelEnd);
        return joint.PocketLength * (width + 2 * depth);
    }
}
