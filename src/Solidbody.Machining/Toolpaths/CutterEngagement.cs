using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>How much of a cutter's rim stands in uncut wood ahead of it, radians: 0 in the air, π in a full slot. Cleared wood is made of discs.</summary>
internal static class CutterEngagement
{
    /// <summary>Places tried along an arc; between two of them the angle grows by well under a degree.</summary>
    private const int Trials = 32;

    /// <summary>The greatest engagement on the way round a circle beside a cleared one.</summary>
    /// <param name="cleared">The cutter's axis has been everywhere in this disc.</param>
    /// <param name="next">Its axis now follows this disc's rim, outside the first; radius &gt; 0.</param>
    /// <param name="cutter">Radius R of the cutter, mm.</param>
    /// <remarks>
    /// At distance d from the cleared disc of radius r, the rim meets the edge of cleared wood where cos φ = ((r + R)² − d² − R²) / (2 d R),
    /// φ counted from the direction straight away from the cleared disc's middle (law of cosines). Uncut: the rim within φ of it, ahead of the motion.
    /// </remarks>
    public static double Along(InnerDisc cleared, InnerDisc next, double cutter)
    {
        var apart = cleared.Centre.DistanceTo(next.Centre);
        if (apart + next.Radius <= cleared.Radius) return 0;
        if (apart <= Tolerances.Geometry) return Uncut(next.Radius, cleared.Radius, cutter);
        var outer = Outside(cleared, next);
        var most = 0.0;
        for (var i = 0; i <= Trials; i++)
        {
            var turn = outer * (2.0 * i / Trials - 1);   // from the direction away from the cleared disc
            var (across, along) = (next.Radius * Math.Sin(turn), apart + next.Radius * Math.Cos(turn));
            var half = Uncut(Math.Sqrt(across * across + along * along), cleared.Radius, cutter);
            var ahead = turn - Math.Atan2(across, along);   // travelling towards smaller turns
            most = Math.Max(most, Math.Min(Math.PI, ahead + half) - Math.Max(0, ahead - half));
        }
        return most;
    }

    /// <summary>Half the angle within which a circle's rim lies outside of a cleared disc, seen from its middle, from the direction away from that disc.</summary>
    public static double Outside(InnerDisc cleared, InnerDisc next)
    {
        var apart = cleared.Centre.DistanceTo(next.Centre);
        if (apart <= Tolerances.Geometry || next.Radius <= Tolerances.Geometry) return next.Radius > cleared.Radius ? Math.PI : 0;
        var cosine = (cleared.Radius * cleared.Radius - apart * apart - next.Radius * next.Radius) / (2 * apart * next.Radius);
        return Math.Acos(Math.Clamp(cosine, -1, 1));
    }

    /// <summary>The step by which a circle may grow round a cleared one of the same middle.</summary>
    /// <param name="radius">Of the cleared disc (of the axis), mm.</param>
    /// <param name="cutter">Radius R, mm.</param>
    /// <param name="most">Greatest engagement θ, radians.</param>
    /// <returns>s with (r + R)² = (r + s)² + R² + 2 (r + s) R cos θ.</returns>
    public static double Growth(double radius, double cutter, double most)
    {
        var cosine = cutter * Math.Cos(most);
        return Math.Sqrt(cosine * cosine + (radius + cutter) * (radius + cutter) - cutter * cutter) - cosine - radius;
    }

    private static double Uncut(double distance, double cleared, double cutter)
    {
        if (distance <= cleared) return 0;
        var edge = cleared + cutter;
        return Math.Acos(Math.Clamp((edge * edge - distance * distance - cutter * cutter) / (2 * distance * cutter), -1, 1));
    }
}
