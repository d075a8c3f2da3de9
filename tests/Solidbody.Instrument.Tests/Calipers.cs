using Solidbody.Geometry;

namespace Solidbody.Instrument.Tests;

/// <summary>Takes measures on the design itself: every expected figure must agree with the closed form it stands for.</summary>
internal static class Calipers
{
    private const double Step = 0.01;

    public static double Take(PartShape shape, Caliper caliper)
    {
        switch (caliper)
        {
            case Caliper.Thickness t: return shape.At(t.At) is var c ? c.Top - c.Bottom : 0;
            case Caliper.DepthFromTop t: return Math.Abs(shape.At(t.At).Top - t.Level);
            case Caliper.DepthFromBottom t: return Math.Abs(shape.At(t.At).Bottom - t.Level);
            case Caliper.Fall f: return shape.At(f.High).Top - shape.At(f.Low).Top;
            case Caliper.Outside o: return Run(shape, o.Middle, o.Along, o.Z, o.Search, wood: true) is var (a, b) ? b - a : double.NaN;
            case Caliper.Inside i: return Run(shape, i.Middle, i.Along, i.Z, i.Search, wood: false) is var (from, to) ? to - from : double.NaN;
            case Caliper.InsideCentre i: return Run(shape, i.Origin + i.At * i.Along, i.Along, i.Z, i.Search, wood: false) is var (c0, c1) ? i.At + (c0 + c1) / 2 : double.NaN;
            case Caliper.InsideEnd e: return Run(shape, e.Origin + e.At * e.Along, e.Along, e.Z, e.Search, wood: false) is var (_, wall) ? e.At + wall : double.NaN;
            default: throw new ArgumentException($"Unknown caliper {caliper}.", nameof(caliper));
        }
    }

    /// <summary>Ends of the run of wood, or of air, through a point, as distances along a line; NaN where the run does not end within the search.</summary>
    private static (double From, double To)? Run(PartShape shape, Point2 middle, Point2 along, double z, double search, bool wood)
    {
        bool Is(double t) => shape.At(middle + t * along) is var c && (!c.IsEmpty && c.Bottom <= z && z <= c.Top) == wood;
        if (!Is(0)) return null;
        double End(int sign)
        {
            for (var t = Step; t <= search; t += Step) if (!Is(sign * t)) return sign * (t - Step / 2);
            return double.NaN;
        }
        return (End(-1), End(+1));
    }
}
