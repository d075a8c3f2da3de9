namespace Solidbody.Instrument.Necks;

/// <summary>A family of neck sections: depth as a fraction F of the full one, over e, the place across as a fraction of the half width.</summary>
/// <param name="P">Fullness of the middle: exponent of e.</param>
/// <param name="Q">Fullness of the shoulders: root taken.</param>
/// <param name="C">Below 1: how upright the edge stands; 1 would be square to the board.</param>
/// <param name="Epsilon">Rounds the middle for small P.</param>
/// <param name="Apex">Where the deepest point lies, fraction of the half width, negative toward the bass side.</param>
/// <remarks>Our own section families: docs/shapes.md.
/// v = (e − a)/(1 − a e); φ = ((v² + ε²)^(p/2) − ε^p) / ((1 + ε²)^(p/2) − ε^p); F = ((1 − cφ)^(1/q) − k)/(1 − k), k = (1 − c)^(1/q).</remarks>
public sealed record NeckProfile(double P, double Q, double C, double Epsilon, double Apex)
{
    /// <summary>The families by the names the instrument file uses.</summary>
    public static IReadOnlyList<(string Name, NeckProfile Profile)> All { get; } =
    [
        ("C", new(2.0, 2.0, 0.96, 0.05, 0)),
        ("D", new(2.6, 2.1, 0.965, 0.05, 0)),
        ("U", new(3.4, 2.4, 0.97, 0.05, 0)),
        ("V", new(1.35, 1.45, 0.93, 0.24, 0)),
        ("asymmetric", new(2.1, 2.0, 0.96, 0.05, -0.16)),
    ];

    public static NeckProfile? Named(string name) => All.FirstOrDefault(p => p.Name == name).Profile;

    // Not to be changed by halves: the constants below belong to them.
    public double P { get; } = P;
    public double Q { get; } = Q;
    public double C { get; } = C;
    public double Epsilon { get; } = Epsilon;
    public double Apex { get; } = Apex;

    private readonly double low = Math.Pow(Epsilon, P), span = Math.Pow(1 + Epsilon * Epsilon, P / 2) - Math.Pow(Epsilon, P), k = Math.Pow(1 - C, 1 / Q);

    /// <summary>F and dF/de at e.</summary>
    /// <param name="e">Place across, −1 … 1.</param>
    public (double Fraction, double Slope) At(double e)
    {
        var stretch = 1 - Apex * e;
        var v = (e - Apex) / stretch;
        var vSlope = (1 - Apex * Apex) / (stretch * stretch);
        var s = v * v + Epsilon * Epsilon;
        var power = Math.Pow(s, P / 2);
        var phi = (power - low) / span;
        var phiSlope = P * v * power / s / span;
        var rest = Math.Max(1 - C, 1 - C * phi);
        var root = Math.Pow(rest, 1 / Q);
        return ((root - k) / (1 - k), -(C / Q) * root / rest * phiSlope * vSlope / (1 - k));
    }
}
