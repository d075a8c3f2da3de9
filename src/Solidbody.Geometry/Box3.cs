namespace Solidbody.Geometry;

/// <summary>An upright box, mm, in the frame its owner names.</summary>
public readonly record struct Box3(double X0, double Y0, double Z0, double X1, double Y1, double Z1)
{
    public Box2 Plan => new(X0, Y0, X1, Y1);
    public double Length => X1 - X0;
    public double Width => Y1 - Y0;
    public double Thickness => Z1 - Z0;
}
