using Solidbody.Geometry;

namespace Solidbody.Instrument.Bodies;

/// <summary>What a through-neck instrument is glued up from, in figures. Right-handed, the body's frame, mm.</summary>
/// <param name="Blank">The box neck and core come out of in one piece, without waste.</param>
/// <param name="Bass">A wing.</param>
/// <param name="Treble">The other.</param>
public sealed record CoreFigures(Box3 Blank, WingFigures Bass, WingFigures Treble);

/// <summary>A wing.</summary>
/// <param name="Blank">The box it comes out of, without waste.</param>
/// <param name="Glue">Glue face to the core, mm².</param>
public sealed record WingFigures(Box3 Blank, double Glue);
