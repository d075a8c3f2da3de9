using System.Collections.Immutable;

namespace Solidbody.Instrument.Playing;

/// <summary>How the strings lie with the action asked for: what the bridge must do for it.</summary>
/// <param name="Strings">From the lowest.</param>
/// <param name="NeckAngle">Radians.</param>
/// <param name="Wedge">Thick end of the wedge that makes it, mm; 0 without one.</param>
/// <param name="LowestSaddle">Lowest a saddle of this bridge carries a string, above the body's front, mm.</param>
/// <param name="HighestSaddle">Highest.</param>
/// <param name="ScaleLine">Body x where the scale ends, mm: the bridge is set out from it.</param>
/// <param name="BoardOverBody">Underside of the board above the body's front, at the heel's end, mm.</param>
public sealed record StringHeights(ImmutableArray<StringHeightFigure> Strings, double NeckAngle, double Wedge, double LowestSaddle, double HighestSaddle, double ScaleLine, double BoardOverBody);

/// <param name="String">From 1, the lowest.</param>
/// <param name="OverFret1">Open string's underside over the fret's top, mm.</param>
/// <param name="OverFret12">mm.</param>
/// <param name="OverLastFret">mm.</param>
/// <param name="SaddleHeight">Its underside on the saddle, above the body's front, mm.</param>
/// <param name="Swing">How far it may swing at its middle before it meets a fret, mm.</param>
/// <param name="Pressed">Pressed at this fret; 0 is open.</param>
/// <param name="Meets">And meets this one.</param>
public sealed record StringHeightFigure(int String, double OverFret1, double OverFret12, double OverLastFret, double SaddleHeight, double Swing, int Pressed, int Meets);
