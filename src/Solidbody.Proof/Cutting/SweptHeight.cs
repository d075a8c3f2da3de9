namespace Solidbody.Proof.Cutting;

/// <summary>The surface a cutter leaves along one straight piece, at one point, in double precision: the plain statement of what
/// <see cref="SweepKernel"/> does to many columns at once.</summary>
/// <remarks>
/// With s along and w across the path in the plan, g the slope dz/ds and t the cutter's place on the path, the height left over a point is
/// min over t ∈ [0, L] of z₀ + g t + E(√(w² + (s − t)²)). E grows with the distance and is convex for flat, ball and cone, so the minimum is
/// where the derivative vanishes, clamped to the path. With u = s − t that is E′(d) u/d = g:
///   ball of radius r   u/√(r² − d²) = g  ⇒  u = g √((r² − w²)/(1 + g²))
///   cone of slope m    m u/d = g         ⇒  u = g |w| / √(m² − g²), none when |g| ≥ m
///   flat, or none      the rim           ⇒  u = sign(g) √(R² − w²)
/// The hollow cutter's E is not convex; its sloping moves are cut as level steps (<see cref="CutPath"/>), where u = 0 is least because E grows.
/// </remarks>
internal static class SweptHeight
{
    /// <summary>A contact on the rim is taken this far inside, relative to the radius, so that rounding does not drop it.</summary>
    internal const double RimFactor = 0.999999;

    /// <summary>Height left at (x, y), mm; +∞ where the cutter does not pass.</summary>
    public static double At(in CutSegment m, in CutterProfile c, double x, double y)
    {
        var (lowX, highX) = m.X0 < m.X1 ? (m.X0, m.X1) : (m.X1, m.X0);
        var (lowY, highY) = m.Y0 < m.Y1 ? (m.Y0, m.Y1) : (m.Y1, m.Y0);
        if (x < lowX - c.Radius || x > highX + c.Radius || y < lowY - c.Radius || y > highY + c.Radius) return double.PositiveInfinity;
        var length = m.PlanLength;
        if (length < CutSegment.PlungeLength)
        {
            var away = Math.Sqrt((x - m.X0) * (x - m.X0) + (y - m.Y0) * (y - m.Y0));
            return away <= c.Radius ? m.LowestZ + c.Height(away) : double.PositiveInfinity;
        }
        var (ux, uy) = ((m.X1 - m.X0) / length, (m.Y1 - m.Y0) / length);
        var s = (x - m.X0) * ux + (y - m.Y0) * uy;
        var w = (y - m.Y0) * ux - (x - m.X0) * uy;
        if (Math.Abs(w) > c.Radius) return double.PositiveInfinity;
        var g = (m.Z1 - m.Z0) / length;
        var t = Math.Clamp(s - Contact(c, g, w), 0, length);
        var d = Math.Sqrt(w * w + (s - t) * (s - t));
        return d <= c.Radius ? m.Z0 + g * t + c.Height(d) : double.PositiveInfinity;
    }

    /// <summary>u, how far ahead of the cutter's axis its lowest contact lies, at distance w from the path.</summary>
    private static double Contact(in CutterProfile c, double g, double w)
    {
        if (g == 0 || c.Shape == ProfileShape.Hollow) return 0;
        var rim = RimFactor * Math.Sqrt(Math.Max(0, (c.Radius - w) * (c.Radius + w)));
        var free = double.PositiveInfinity;
        if (c.Shape != ProfileShape.Flat && c.TipRadius > Math.Abs(w))
            free = Math.Abs(g) * Math.Sqrt((c.TipRadius - w) * (c.TipRadius + w) / (1 + g * g));
        if (c.Shape == ProfileShape.Cone)
        {
            var cone = Math.Abs(g) < c.Slope ? Math.Abs(g * w) / Math.Sqrt((c.Slope - g) * (c.Slope + g)) : double.PositiveInfinity;
            if (w * w + cone * cone >= c.Touch * c.Touch) free = cone;
        }
        return Math.CopySign(Math.Min(free, rim), g);
    }
}
