namespace Solidbody.Instrument.Bodies;

/// <summary>How the neck sits in the body: leaned by the neck angle, its heel's rear lower edge at the pocket's end.</summary>
/// <param name="HeelEnd">x of the heel's end, in neck and body, mm.</param>
/// <param name="HeelLength">Along the neck, mm.</param>
/// <param name="Depth">Of the pocket at the heel's end, mm.</param>
/// <param name="Angle">Radians; positive leans the head back.</param>
/// <param name="Shim">Even, under the heel, mm.</param>
/// <param name="AngleBy">What makes the angle.</param>
/// <remarks>In the neck, s runs along the glue plane from the nut and h square to it from the heel's back; in the body, x along and z out of the front.
/// A wedge that lifts the heel's end is as long as the heel and sharp at its other end.</remarks>
public sealed record NeckSeat(double HeelEnd, double HeelLength, double Depth, double Angle, double Shim, AngleMaking AngleBy)
{
    public static NeckSeat Of(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        var pocket = d.Body.Pocket;
        return new(NeckJoint.Of(d).HeelEnd, pocket.Length, pocket.Depth, pocket.Angle, pocket.Shim, pocket.AngleBy);
    }

    /// <summary>Body x of the scale line: where the strings' length ends, over the body.</summary>
    public static double ScaleLine(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        return Of(d).X(d.Scale, FretTops(d));
    }

    /// <summary>The fret tops' plane above the heel's back, mm.</summary>
    public static double FretTops(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        return d.Neck.Heel.Thickness + d.Fretboard.Thickness + d.Fretboard.FretHeight;
    }

    /// <summary>Thick end of the wedge, mm; 0 without one.</summary>
    public double Wedge => AngleBy == AngleMaking.Wedge ? HeelLength * Math.Sin(Math.Abs(Angle)) : 0;
    /// <summary>How much of it stands under the heel's end, mm.</summary>
    public double Lift => Angle > 0 ? Wedge : 0;

    /// <summary>Body x of a point of the neck; s itself when the neck does not lean.</summary>
    public double X(double s, double h)
    {
        var half = Math.Sin(Angle / 2);
        return s - (s - HeelEnd) * 2 * half * half - (Shim + h) * Math.Sin(Angle);
    }

    /// <summary>Height of a point of the neck above the body's front.</summary>
    public double Z(double s, double h) => -Depth + Lift + (s - HeelEnd) * Math.Sin(Angle) + (Shim + h) * Math.Cos(Angle);

    /// <summary>Height h at which the neck meets the body's front, at s.</summary>
    public double FrontAt(double s) => (Depth - Lift - (s - HeelEnd) * Math.Sin(Angle)) / Math.Cos(Angle) - Shim;

    /// <summary>Slope of the pocket's floor toward the bridge, and its height at x.</summary>
    public double FloorSlope => AngleBy == AngleMaking.Floor ? Math.Tan(Angle) : 0;
    public double FloorZ(double x) => -Depth + (x - HeelEnd) * FloorSlope;
}
