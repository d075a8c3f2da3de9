using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Geometry;

namespace Solidbody.Instrument;

/// <summary>A body's outline taken from a drawing.</summary>
/// <param name="Source">The drawing as it was read: a packet carries it, so that it can be made again.</param>
/// <param name="Loop">In the instrument frame, right-handed, counter-clockwise, mm; no side longer than a few millimetres.</param>
/// <param name="Notes">What was mended, and how it was understood.</param>
public sealed record DrawnOutline(DrawingFile Source, Loop Loop, ImmutableArray<DrawingNote> Notes);
