using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A bridge of wood left between the part and its blank.</summary>
/// <param name="At">Its middle; the nearest point of the outline counts.</param>
/// <param name="Length">Wood that stays along the outline, mm, at least.</param>
/// <param name="Top">Height of its upper face, laid frame.</param>
public record TabSpan(Point2 At, double Length, double Top);
