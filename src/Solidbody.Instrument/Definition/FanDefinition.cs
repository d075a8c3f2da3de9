namespace Solidbody.Instrument;

/// <summary>Fanned frets: the lowest string's scale is longer than the highest's; the instrument's scale is the middle of the two.</summary>
/// <param name="Difference">Lowest string's scale less the highest's.</param>
/// <param name="PerpendicularFret">The fret that stands square to the centre line; 0 is the nut, parts of a fret count.</param>
public sealed record FanDefinition(double Difference, double PerpendicularFret);
