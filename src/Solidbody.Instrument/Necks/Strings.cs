using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Necks;

/// <summary>The strings as straight lines over the instrument, numbered from 0, the lowest, on the bass side; right-handed plan, mm.</summary>
/// <param name="Count">Strings n.</param>
/// <param name="Scale">Nut to scale line, on the centre line.</param>
/// <param name="NutSpread">First to last at the nut, square to the centre line.</param>
/// <param name="BridgeSpread">First to last at the scale line, the same way.</param>
/// <remarks>Nut and scale line are straight; on a fan they slant against each other. Strings that stand in the same shares of both are cut in one ratio by one straight line:
/// (1 − r) N + r B is linear in the share. So every fret is straight, and divides every string in its own twelve-tone ratio exactly.</remarks>
public sealed record Strings(int Count, double Scale, double NutSpread, double BridgeSpread)
{
    /// <summary>Half of what the lowest string's scale is longer than the highest's; 0 is a single scale.</summary>
    public double HalfDifference { get; init; }
    /// <summary>Share of the scale at which a fret would stand square to the centre line.</summary>
    public double SquareAt { get; init; }
    /// <summary>Each string's share of the nut's spread, −½ … ½; empty for equal centres.</summary>
    public ImmutableArray<double> NutShares { get; init; } = [];
    /// <summary>The nut's face lies this far behind the line where the strings' speaking length begins: behind a zero fret.</summary>
    public double SetBack { get; init; }
    /// <summary>The headstock's own u = 0 lies this far beyond the middle of the nut line: at the foremost corner of the board.</summary>
    public double HeadFrom { get; init; }

    public static Strings Of(InstrumentDefinition d) => Of(d.Strings, d.Scale, d.Fan, d.Nut, d.Body.Bridge.StringSpread, d.Tuning);

    internal static Strings Of(int count, double scale, FanDefinition? fan, NutDefinition nut, double bridgeSpread, TuningDefinition? tuning)
    {
        var strings = new Strings(count, scale, nut.StringSpread, bridgeSpread)
        {
            HalfDifference = (fan?.Difference ?? 0) / 2,
            SquareAt = FretTable.Position(1, fan?.PerpendicularFret ?? 0),
            NutShares = nut.Spacing == NutSpacing.Gaps ? NutSlots.EqualGaps(nut.StringSpread, count, tuning) : [],
            SetBack = nut.ZeroFretSetBack ?? 0,
        };
        return strings with { HeadFrom = strings.SetBack + Math.Abs(strings.LineSlope(0)) * nut.Width / 2 };
    }

    private double Share(int i) => Count == 1 ? 0 : (double)i / (Count - 1) - 0.5;
    public double NutY(int i) => NutSpread * (NutShares.IsEmpty ? Share(i) : NutShares[i]);
    public double BridgeY(int i) => BridgeSpread * Share(i);

    /// <summary>dx/dy of the straight line that cuts the outer strings at a ratio of their scales: 0 is the nut, 1 the scale line.</summary>
    public double LineSlope(double ratio) => HalfDifference == 0 ? 0 : -2 * (ratio - SquareAt) * HalfDifference / (NutSpread + (BridgeSpread - NutSpread) * ratio);
    /// <summary>Where a string's speaking length begins.</summary>
    public Point2 Nut(int i) => new(LineSlope(0) * NutY(i), NutY(i));
    /// <summary>Where it ends: on the scale line, before any compensation.</summary>
    public Point2 Saddle(int i) => new(Scale + LineSlope(1) * BridgeY(i), BridgeY(i));
    /// <summary>The point that divides a string in a ratio of its own length.</summary>
    public Point2 At(int i, double ratio) => (1 - ratio) * Nut(i) + ratio * Saddle(i);
    /// <summary>A string's scale as the trade states it: along the centre line's direction.</summary>
    public double ScaleOf(int i) => Saddle(i).X - Nut(i).X;
    /// <summary>Along the string itself: longer than its scale by a few hundredths, for it runs aslant.</summary>
    public double Length(int i) => Nut(i).DistanceTo(Saddle(i));

    /// <summary>y of a string at x; its straight run goes on beyond the nut.</summary>
    public double Y(int i, double x) => NutY(i) + (BridgeY(i) - NutY(i)) * (x - Nut(i).X) / ScaleOf(i);
    /// <summary>Spread between the outer strings at x, square to the centre line.</summary>
    public double Spread(double x) => Y(Count - 1, x) - Y(0, x);
    /// <summary>Drift of a string per mm beyond the nut (u = −x).</summary>
    public double Drift(int i) => -(BridgeY(i) - NutY(i)) / ScaleOf(i);
    /// <summary>Where a string leaves the nut for its post, in the headstock's own (u, y).</summary>
    public Point2 Leave(int i)
    {
        var x = Nut(i).X - SetBack;
        return new(-x - HeadFrom, Y(i, x));
    }
}
