namespace Solidbody.Instrument.Bodies;

/// <summary>The long measures both sides of the outline hang on, mm.</summary>
/// <param name="Scale">For cutaway positions given as frets.</param>
/// <param name="ShoulderX">Shoulder line.</param>
/// <param name="TailX">Rearmost point.</param>
/// <param name="PocketHalfWidth">Half the heel's width.</param>
public sealed record OutlineFrame(double Scale, double ShoulderX, double TailX, double PocketHalfWidth)
{
    // Shape constants of the family, without unit (docs/shapes.md).
    /// <summary>Leg of an oval quarter as a fraction of its half axis; growth of that leg, and fall of curvature, with squareness.</summary>
    internal const double OvalLeg = 0.523, SquareLeg = 0.30, SquareCurvature = 0.6;

    public static OutlineFrame Of(OutlineDefinition measures, NeckJoint joint) => Of(measures, joint.Scale, joint.ShoulderX, joint.HeelWidth);

    public static OutlineFrame Of(OutlineDefinition measures, double scale, double shoulderX, double heelWidth)
    {
        var fore = new[] { measures.Treble, measures.Bass }.OfType<ShoulderDefinition.Horned>()
            .Aggregate(shoulderX, (x, horn) => Math.Min(x, shoulderX - horn.HornReach));
        return new(scale, shoulderX, fore + measures.BodyLength, heelWidth / 2);
    }
}
