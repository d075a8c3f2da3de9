namespace Solidbody.Instrument;

/// <summary>A body that exists, as it was measured, mm: neck and fretboard are made for it. Its pocket's length, depth and corners, its bridge and its wood stand in the body's definition.</summary>
/// <param name="PocketWidth">At the end wall.</param>
/// <param name="PocketWidthAtMouth">Where the heel leaves the body.</param>
/// <param name="PocketToScaleLine">From the pocket's end wall to the line the bridge's saddles stand on before compensation.</param>
public sealed record BoughtBody(double PocketWidth, double PocketWidthAtMouth, double PocketToScaleLine);
