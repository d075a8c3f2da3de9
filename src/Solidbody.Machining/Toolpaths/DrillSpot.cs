using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A hole to drill, laid frame.</summary>
/// <param name="Centre">Plan.</param>
/// <param name="Mouth">Height of the wood where it starts.</param>
/// <param name="Tip">Lowest height of the drill's tip.</param>
public record DrillSpot(Point2 Centre, double Mouth, double Tip);
