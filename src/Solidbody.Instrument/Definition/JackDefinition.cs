namespace Solidbody.Instrument;

/// <summary>Side bore for the jack: from the outline inward to the control cavity.</summary>
/// <param name="X">Where the bore meets the outline, from the nut; treble side.</param>
/// <param name="Angle">Direction inward in the plan, radians from +x.</param>
public sealed record JackDefinition(double X, double Angle, double Diameter)
{
    /// <summary>A plate let into the body's side; null where the jack holds itself in the bore.</summary>
    public JackPlateDefinition? Plate { get; init; }
}

/// <param name="Length">Along the outline.</param>
/// <param name="Width">Front to back.</param>
/// <param name="LedgeDepth">How deep it is let in, by hand.</param>
/// <param name="ScrewsApart">Its two screws, along the outline.</param>
/// <param name="Pilot">Holes for them, by hand.</param>
/// <param name="PilotDepth">From the ledge.</param>
public sealed record JackPlateDefinition(double Length, double Width, double LedgeDepth, double ScrewsApart, double Pilot, double PilotDepth);
