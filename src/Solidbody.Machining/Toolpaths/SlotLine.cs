using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A thin straight slot below a surface.</summary>
/// <param name="A">Where the cutter's axis starts, plan; past the board's edge where the slot runs out.</param>
/// <param name="B">Where it ends.</param>
/// <param name="Depth">Below the surface, along Z, mm.</param>
/// <param name="Over">How high wood may stand over the surface at the ends, past the board's edge, mm ≥ 0.</param>
public record SlotLine(Point2 A, Point2 B, double Depth, double Over = 0);
