namespace Solidbody.Instrument;

/// <summary>A plate over a room in the back: on a ledge, or on the back itself where the room has none.</summary>
/// <param name="Gap">Between plate and ledge, all round.</param>
/// <param name="Thickness">Of the plate.</param>
/// <param name="Lining">Shielding foil or paint under the plate.</param>
/// <param name="Screws">How many; they spread evenly along the middle of what the plate lies on.</param>
/// <param name="Pilot">Hole in the wood.</param>
/// <param name="PilotDepth">From what the plate lies on.</param>
public sealed record CoverDefinition(double Gap, double Thickness, double Lining, int Screws, double Pilot, double PilotDepth);
