namespace Solidbody.Instrument;

/// <summary>A strap button on the body's edge: it stands on the outline's point nearest to the place given, half way between front and back, its screw square to the outline.</summary>
/// <param name="Name">Such as <c>horn button</c>.</param>
/// <param name="X">From the nut.</param>
/// <param name="Y">From the centre line toward the treble side.</param>
/// <param name="Pilot">Hole for its screw, made by hand.</param>
/// <param name="PilotDepth">From the outline inward.</param>
public sealed record StrapButtonDefinition(string Name, double X, double Y, double Pilot, double PilotDepth);
