namespace Solidbody.Geometry;

/// <summary>A disc in a plan, mm.</summary>
public readonly record struct InnerDisc(Point2 Centre, double Radius);
