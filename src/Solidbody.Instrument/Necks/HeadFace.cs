using Solidbody.Geometry;
using Solidbody.Instrument.Fretboards;

namespace Solidbody.Instrument.Necks;

/// <summary>The neck's front with an angled headstock: level over the shaft, then a plane that falls back from behind the nut. z = 0 is the glue plane, lengths mm.</summary>
/// <param name="Begin">Where the plane begins, from the nut toward the tip.</param>
/// <param name="Angle">How far it leans back, radians; 0 is level throughout.</param>
/// <param name="From">Where the headstock's own measures begin, from the nut line toward the tip.</param>
/// <remarks>Headstock and posts are drawn in the face itself: a point s beyond the break lies s·cos A from it in the plan and s·sin A below it.</remarks>
public sealed record HeadFace(double Begin, double Angle, double From = 0) : IHeight
{
    /// <summary>The headstock's face begins this far behind the nut, mm.</summary>
    public const double NutShelf = 0.5;

    public static HeadFace Of(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        // Square to the centre line, behind the last corner of a nut that stands aslant.
        var (layout, from) = (FretLayout.Of(d), Strings.Of(d).HeadFrom);
        var (shelf, half) = (layout.NutBack.Moved(-NutShelf), layout.HalfWidth(-from));
        return new(-Math.Min(shelf.X(half), shelf.X(-half)), d.Headstock.Angle, from);
    }

    private readonly (double Sine, double Cosine, double Tangent) turn = (Math.Sin(Angle), Math.Cos(Angle), Math.Tan(Angle));

    public double Z(double x, double y) => Math.Min(0, (x + Begin) * turn.Tangent);

    /// <summary>Plan of a point of the face.</summary>
    /// <param name="face">(u, y): u along the face, as the headstock is drawn.</param>
    public Point2 Plan(Point2 face) => new(-(Run(face) <= Begin ? Run(face) : Begin + (Run(face) - Begin) * turn.Cosine), face.Y);
    private double Run(Point2 face) => From + face.X;

    /// <summary>The point square under one of the face beyond the break.</summary>
    /// <param name="face">(u, y) along the face.</param>
    /// <param name="depth">Square to the face, into the wood, mm.</param>
    public PartPoint Under(Point2 face, double depth)
    {
        var plan = Plan(face);
        return new(plan.X + depth * turn.Sine, plan.Y, Z(plan.X, plan.Y) - depth * turn.Cosine);
    }
}
