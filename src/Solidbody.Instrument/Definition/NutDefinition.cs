namespace Solidbody.Instrument;

/// <param name="Width">Board width at the nut.</param>
/// <param name="Thickness">Along x: the nut stands on x ∈ [−thickness, 0].</param>
/// <param name="StringSpread">First to last string, centre to centre.</param>
/// <param name="Compensated">Whether each string's slot is moved toward the bridge for its intonation.</param>
public sealed record NutDefinition(double Width, double Thickness, double StringSpread, bool Compensated = false);
