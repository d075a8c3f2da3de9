using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A round, flat-floored hole wider than its cutter, laid frame.</summary>
/// <param name="Centre">Plan.</param>
/// <param name="Diameter">Finished diameter, mm.</param>
/// <param name="Mouth">Height of the wood where it starts.</param>
/// <param name="Floor">Height of the floor.</param>
public record BoreSpot(Point2 Centre, double Diameter, double Mouth, double Floor);
