using Solidbody.Geometry;

namespace Solidbody.Instrument.Balance;

/// <summary>An instrument that hangs from two buttons by a strap over a shoulder, in the upright plane of its front.</summary>
/// <param name="Horn">Button on the neck's side, plan, mm.</param>
/// <param name="Tail">The other.</param>
/// <param name="Centre">Of gravity, plan.</param>
/// <param name="Strap">Length from button to button, mm; longer than the buttons are apart.</param>
/// <param name="Grip">Friction of the strap on the shoulder, ≥ 0.</param>
/// <remarks>
/// The shoulder is a point S that holds the strap from below; the player's body does not help. Only S and the weight act, so S stands upright over the centre of gravity,
/// on the ellipse of points from which both legs together are the strap. The legs' level pulls cancel: T₁ sin α₁ = T₂ sin α₂. A strap turned over a shoulder by the angle φ
/// stays where it is while neither tension is more than e^(μφ) of the other (rope friction: Euler 1769, Eytelwein 1808, from memory). Beyond that it slides:
/// toward the horn the neck drops, toward the tail it rises.
/// </remarks>
public sealed record Hanging(Point2 Horn, Point2 Tail, Point2 Centre, double Strap, double Grip)
{
    /// <summary>The neck stands straight down, or up, mm of strap or none: where the search ends, radians.</summary>
    private const double Upright = Math.PI / 2;
    private const double SearchStep = Math.PI / 180;
    private const int Halvings = 40;

    /// <summary>How much more than its grip allows the strap is drawn toward the horn, as ln(T₁/T₂) − μφ: positive, the neck drops.</summary>
    /// <param name="angle">Of the neck above the level, radians.</param>
    public double Drops(double angle) => Legs(angle, Centre) is var (ratio, turn) ? Math.Log(ratio) - Grip * turn : Beyond(angle);

    /// <summary>The same toward the tail: positive, the neck rises.</summary>
    public double Rises(double angle) => Legs(angle, Centre) is var (ratio, turn) ? -Math.Log(ratio) - Grip * turn : -Beyond(angle);

    /// <summary>Tension of the horn's leg over the tail's at an angle; null where the centre of gravity does not hang between the buttons.</summary>
    public double? PullRatio(double angle) => Legs(angle, Centre)?.Ratio;

    /// <summary>Most that ratio may be, or its inverse: what the strap grips.</summary>
    public double? MostRatio(double angle) => Legs(angle, Centre) is var (_, turn) ? Math.Exp(Grip * turn) : null;

    /// <summary>Angle at which it comes to rest when let go at an angle: that angle itself where the strap grips; ±90° where it slides to its end.</summary>
    public double RestsAt(double played) => Drops(played) > 0 ? Slide(played, -SearchStep, Drops) : Rises(played) > 0 ? Slide(played, SearchStep, Rises) : played;

    /// <summary>Lowest and highest angle around a held one at which the strap still grips.</summary>
    public (double Lowest, double Highest) Held(double played)
    {
        var from = RestsAt(played);
        double Edge(double step, Func<double, double> slides)
        {
            var angle = from;
            while (Math.Abs(angle + step) <= Upright && slides(angle + step) <= 0) angle += step;
            return Math.Abs(angle + step) > Upright ? Math.Sign(step) * Upright : Between(angle, angle + step, slides);
        }
        return (Edge(-SearchStep, a => Math.Max(Drops(a), Rises(a))), Edge(SearchStep, a => Math.Max(Drops(a), Rises(a))));
    }

    /// <summary>Upward force of a hand at a place, as a share of the weight, that keeps the neck from dropping at an angle; 0 where the strap grips.</summary>
    public double HandShare(double angle, Point2 hand)
    {
        if (!(Drops(angle) > 0)) return 0;
        // The hand moves the load's line back toward the tail, until the strap grips: between the buttons the pull's ratio falls all the way.
        var (neck, held) = (Toward(angle), Centre);
        var (horn, tail) = (Horn.Dot(neck), Tail.Dot(neck));
        var (slides, grips) = (Math.Min(Centre.Dot(neck), horn), tail);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (slides + grips) / 2;
            held = Centre + (middle - Centre.Dot(neck)) * neck;
            if (Legs(angle, held) is var (ratio, turn) && Math.Log(ratio) <= Grip * turn) grips = middle; else slides = middle;
        }
        return (Centre.Dot(neck) - grips) / (hand.Dot(neck) - grips);
    }

    /// <summary>Unit, level, toward the neck, in the plan of an instrument whose neck stands at an angle: −x level, −y up at 0.</summary>
    internal static Point2 Toward(double angle) => new(-Math.Cos(angle), Math.Sin(angle));
    internal static Point2 Up(double angle) => new(-Math.Sin(angle), -Math.Cos(angle));

    private static double Slide(double from, double step, Func<double, double> slides)
    {
        for (var angle = from; Math.Abs(angle + step) <= Upright; angle += step)
            if (!(slides(angle + step) > 0)) return Between(angle + step, angle, slides);
        return Math.Sign(step) * Upright;
    }

    /// <summary>Where gripping turns into sliding.</summary>
    private static double Between(double grips, double sliding, Func<double, double> slides)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (grips + sliding) / 2;
            if (slides(middle) > 0) sliding = middle; else grips = middle;
        }
        return grips;
    }

    /// <summary>The centre of gravity hangs outside the buttons: no strap holds it, it turns toward that side.</summary>
    private double Beyond(double angle) => Centre.Dot(Toward(angle)) >= Math.Max(Horn.Dot(Toward(angle)), Tail.Dot(Toward(angle))) ? double.PositiveInfinity : double.NegativeInfinity;

    /// <summary>Ratio of the legs' tensions and the angle the strap turns by over the shoulder.</summary>
    /// <remarks>With r₁ + r₂ = L the difference r₁² − r₂² is linear in the height s of S, so r₁ = p + q s, and r₁² = d₁² + (s − v₁)² is a quadratic in s, of which S is the upper root.</remarks>
    private (double Ratio, double Turn)? Legs(double angle, Point2 load)
    {
        var (neck, up) = (Toward(angle), Up(angle));
        var (d1, d2, v1, v2) = ((Horn - load).Dot(neck), (Tail - load).Dot(neck), Horn.Dot(up), Tail.Dot(up));
        if (!(d1 > 0 && d2 < 0)) return null;
        var (p, q) = ((Strap + (d1 * d1 - d2 * d2 + v1 * v1 - v2 * v2) / Strap) / 2, -(v1 - v2) / Strap);
        var (half, rest, lead) = (v1 + p * q, d1 * d1 + v1 * v1 - p * p, 1 - q * q);
        var root = half * half - lead * rest;
        if (!(root >= 0 && lead > 0)) return null;
        var s = (half + Math.Sqrt(root)) / lead;
        var (r1, r2) = (Math.Sqrt(d1 * d1 + (s - v1) * (s - v1)), Math.Sqrt(d2 * d2 + (s - v2) * (s - v2)));
        var turn = Math.PI - Math.Atan2(d1, s - v1) - Math.Atan2(-d2, s - v2);
        return (-d2 * r1 / (d1 * r2), turn);
    }
}
