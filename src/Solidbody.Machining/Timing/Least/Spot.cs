using Solidbody.Geometry;

namespace Solidbody.Machining.Timing.Least;

/// <summary>A place a path must come to: anywhere within a radius of a point, mm.</summary>
internal readonly record struct Spot(Point2 At, double Radius);
