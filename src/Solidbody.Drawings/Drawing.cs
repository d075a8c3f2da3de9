using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Drawings;

/// <summary>What a drawing holds: closed loops in mm, x to the right, y up, its own origin.</summary>
/// <param name="Loops">None crosses itself or another; counter-clockwise.</param>
/// <param name="Notes">What was mended, taken for granted or left out, in the order it was met.</param>
public sealed record Drawing(ImmutableArray<DrawnLoop> Loops, ImmutableArray<DrawingNote> Notes);

/// <summary>A closed loop of a drawing.</summary>
/// <param name="Name">Its id or its layer; what it is, where it has neither.</param>
/// <param name="Loop">Curves as chords within <see cref="Tolerances.Flattening"/>.</param>
/// <param name="At">Where the drawing begins to describe it.</param>
public sealed record DrawnLoop(string Name, Loop Loop, DrawingPlace At);

/// <summary>A place in a drawing's text, counted from 1.</summary>
/// <param name="Column">1 in a DXF, which is a list of lines.</param>
public readonly record struct DrawingPlace(int Line, int Column);

/// <summary>What sort of thing a note tells of.</summary>
public enum DrawingNoteKind
{
    /// <summary>The drawing was changed: a gap was closed, a speck left out.</summary>
    Mended,
    /// <summary>Something in the drawing was not read, or something it does not say was taken for granted.</summary>
    Understood,
}

/// <summary>Something a person should know about how a drawing was read.</summary>
/// <param name="Said">One clause.</param>
/// <param name="Size">Of what was mended, mm; 0 where nothing was.</param>
public sealed record DrawingNote(DrawingNoteKind Kind, DrawingPlace At, string Said, double Size = 0);
