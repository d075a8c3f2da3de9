namespace Solidbody.Instrument.Playing;

/// <summary>How far from its twelve-tone note a string sounds at each fret, its open note being true.</summary>
/// <param name="Line">Nut, frets and saddle.</param>
/// <param name="Springiness">κ = E A / T: how many times faster the pull grows than the length, as shares.</param>
/// <param name="Stiffness">b of the open string: <see cref="StiffString.Share"/>.</param>
/// <remarks>Anderson and Beausoleil (see <see cref="StiffString"/>), exact form: cents = 1200 log₂ [L₀/(γ Lₙ) · √((1 + Q)(1 + κ Q)) · S(bₙ)/S(b₀)], γ = 2^(n/12), Q the stretch,
/// bₙ = b L₀/(Lₙ √(1 + κ Q)), S the sharpness with one end clamped.</remarks>
public sealed record StringSharpness(FrettedString Line, double Springiness, double Stiffness)
{
    private const int ClampedEnds = 1;

    /// <summary>Frequency ratio of a semitone n times over.</summary>
    public static double Ratio(int fret) => Math.Pow(2, fret / 12.0);

    /// <summary>What stretch and stiffness raise the note by, the sounding length apart: s.</summary>
    public double Raised(int fret)
    {
        var stretch = Line.Stretch(fret);
        var pull = 1 + Springiness * stretch;
        var stiff = Stiffness * Line.Open / Line.Sounding(fret) / Math.Sqrt(pull);
        return Math.Sqrt((1 + stretch) * pull) * StiffString.Sharpness(stiff, ClampedEnds) / StiffString.Sharpness(Stiffness, ClampedEnds);
    }

    public double Cents(int fret) => 1200 * Math.Log2(Line.Open / (Ratio(fret) * Line.Sounding(fret)) * Raised(fret));

    /// <summary>How far the saddle goes back for one fret to sound true, mm.</summary>
    /// <param name="open">Open length L, mm.</param>
    /// <param name="sounding">From that fret to the saddle, mm.</param>
    /// <param name="ratio">r = 2^(n/12).</param>
    /// <param name="raised">s, taken as it is with the saddle on the scale line.</param>
    /// <returns>d = (s L − r l)/(r − s), from s (L + d)/(l + d) = r; for a fret at l = L/r it is L (s − 1)/(r − s).</returns>
    public static double SetBack(double open, double sounding, double ratio, double raised) => (raised * open - ratio * sounding) / (ratio - raised);
}
