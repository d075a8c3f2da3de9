namespace Solidbody.Instrument;

/// <summary>How the strings lie side by side in the nut: the same from middle to middle, or the same gap between them.</summary>
public enum NutSpacing { Centres, Gaps }

/// <param name="Width">Board width at the nut line's middle.</param>
/// <param name="Thickness">Along x: the nut stands against the board's end.</param>
/// <param name="StringSpread">First to last string, centre to centre.</param>
/// <param name="Compensated">Whether each string's slot is moved toward the bridge for its intonation.</param>
public sealed record NutDefinition(double Width, double Thickness, double StringSpread, bool Compensated = false)
{
    public NutSpacing Spacing { get; init; } = NutSpacing.Centres;
    /// <summary>The nut only guides the strings and stands this far behind a zero fret; null without one.</summary>
    public double? ZeroFretSetBack { get; init; }
}
