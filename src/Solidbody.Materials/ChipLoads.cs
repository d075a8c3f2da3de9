using System.Collections.Immutable;

namespace Solidbody.Materials;

/// <summary>Usual chip load for a cutter's diameter, mm a tooth.</summary>
public readonly record struct ChipLoadRange(double Least, double Most)
{
    public double Middle => (Least + Most) / 2;
}

/// <summary>Chip loads in solid wood on small routers: common practice, no source.</summary>
public static class ChipLoads
{
    public const string Source = "common practice, no source";

    /// <summary>Diameter mm → chip load mm a tooth, ascending.</summary>
    public static ImmutableArray<(double Diameter, ChipLoadRange Load)> Table { get; } =
    [
        (1.5, new(0.01, 0.03)),
        (3, new(0.03, 0.10)),
        (6, new(0.08, 0.25)),
        (12, new(0.20, 0.50)),
    ];

    /// <summary>The range for a diameter: straight lines between the table's rows; below the first in proportion to the diameter; above the last as the last.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Diameter is not positive and finite, mm.</exception>
    public static ChipLoadRange For(double diameter)
    {
        if (!(diameter > 0 && double.IsFinite(diameter)))
            throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "A cutter's diameter is positive and finite, mm.");
        var (first, last) = (Table[0], Table[^1]);
        if (diameter <= first.Diameter) return Scaled(first.Load, diameter / first.Diameter);
        if (diameter >= last.Diameter) return last.Load;
        var above = 1;
        while (Table[above].Diameter < diameter) above++;
        var (a, b) = (Table[above - 1], Table[above]);
        var t = (diameter - a.Diameter) / (b.Diameter - a.Diameter);
        return new(a.Load.Least + t * (b.Load.Least - a.Load.Least), a.Load.Most + t * (b.Load.Most - a.Load.Most));
    }

    private static ChipLoadRange Scaled(ChipLoadRange range, double by) => new(range.Least * by, range.Most * by);
}
