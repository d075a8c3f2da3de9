using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Making;

/// <summary>Slows a motion down until its Z axis keeps up: on a steep face the feed along the path may ask more of it than it can.</summary>
internal static class FeedLimit
{
    /// <summary>Slowed feeds are whole multiples of this, so that a carve does not say a new feed in every line; 60 mm/min, mm/s.</summary>
    private const double Step = 1;
    private const double MillimetresPerInch = 25.4;

    public static Motion Of(in Motion motion, Machine machine)
    {
        if (motion.Kind == MotionKind.Rapid) return motion;
        var climb = Math.Abs(motion.To.Z - motion.From.Z);
        if (climb <= Tolerances.Geometry) return motion;
        // The text's ends lie on its grid: a short motion may come out steeper there.
        var grid = (machine.Inches ? MillimetresPerInch / 10 : 1) * Math.Pow(10, -machine.Decimals);
        climb += grid;
        var length = Math.Max(motion.Length - grid, climb);
        if (climb * motion.Feed <= machine.FeedMostZ * length * (1 + 1e-9)) return motion;
        var most = machine.FeedMostZ * length / climb;
        return motion with { Feed = most > Step ? Math.Floor(most / Step) * Step : most };
    }
}
