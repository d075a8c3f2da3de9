using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

internal enum EngagedMoveKind { Straight, ArcClockwise, ArcCounterClockwise, Over }

/// <summary>One move of a room's clearing at one level; <see cref="EngagedMoveKind.Over"/> lifts the cutter over the wood.</summary>
internal readonly record struct EngagedMove(EngagedMoveKind Kind, Point2 To, Point2 Centre);
