using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Playing;

/// <summary>The chain of measures from the pocket's floor to the saddles, and each of its measures from all the others, in closed form.</summary>
/// <remarks>
/// Middle saddle over the body's front = −D + w + A sin θ + (S + H + B + F + m) cos θ, with
/// D pocket depth, w lift of a wedge (L sin θ when θ &gt; 0), A from the heel's end to the scale line, θ neck angle, S shim, H heel, B board, F fret,
/// m the middle of lowest and highest saddle above the fret tops' plane, L heel length. It must be the middle of the bridge's range.
/// A through-neck has neither wedge nor shim, and leans about its own glue plane, which stands a = H cos θ − D over the front: a + A sin θ + (B + F + m) cos θ.
/// </remarks>
/// <param name="d">The definition.</param>
/// <param name="lays">Its strings.</param>
internal sealed class HeightChain(InstrumentDefinition d, ImmutableArray<StringLay> lays)
{
    private readonly NeckSeat seat = NeckSeat.Of(d);
    private readonly NeckPocketDefinition pocket = d.Body.Pocket;
    private (StringLay Low, StringLay High) Ends => (lays.MinBy(SaddleZ)!, lays.MaxBy(SaddleZ)!);

    /// <summary>Middle of the bridge's range, above the body's front.</summary>
    public double Wanted => d.Body.Bridge.BaseHeight + d.Body.Bridge.SaddleLowest + d.Body.Bridge.SaddleRise / 2;
    /// <summary>Middle of lowest and highest saddle, above the body's front.</summary>
    public double Middle => (SaddleZ(Ends.Low) + SaddleZ(Ends.High)) / 2;
    /// <summary>Height of a string's underside on its saddle above the body's front.</summary>
    public double SaddleZ(StringLay lay) => seat.Z(lay.NutX + lay.Length, NeckSeat.FretTops(d) + lay.Saddle);

    /// <summary>The glue plane over the body's front, where the heel ends.</summary>
    private double Above => seat.Z(seat.HeelEnd, d.Neck.Heel.Thickness);

    /// <summary>How much the middle saddle stands too high, mm; negative is too low.</summary>
    public double TooHigh => Middle - Wanted;

    /// <summary>The value of one measure that brings the middle saddle to the middle of the bridge's range: mm, radians; NaN when no angle does.</summary>
    public double Solved(FreeMeasure measure) => measure switch
    {
        FreeMeasure.Depth => pocket.Depth + TooHigh,
        FreeMeasure.Heel => d.Neck.Heel.Thickness - TooHigh / Math.Cos(pocket.Angle),
        FreeMeasure.Shim => pocket.Shim - TooHigh / Math.Cos(pocket.Angle),
        FreeMeasure.Bridge => d.Body.Bridge.BaseHeight + TooHigh,
        FreeMeasure.Above => Above - TooHigh,
        FreeMeasure.Angle => Angle(),
        _ => Middle,
    };

    /// <summary>P sin θ + Q cos θ = C gives θ = asin(C / √(P² + Q²)) − atan(Q / P); leaning back, a wedge's lift joins P.</summary>
    private double Angle()
    {
        var (low, high) = Ends;
        var (p, q, c) = ((low.NutX + low.Length + high.NutX + high.Length) / 2 - seat.HeelEnd, pocket.Shim + NeckSeat.FretTops(d) + (low.Saddle + high.Saddle) / 2, Wanted + pocket.Depth);
        if (d.Neck.Joint == JointKind.Through) (q, c) = (q - d.Neck.Heel.Thickness, Wanted - Above);
        double Of(double lever) => Math.Asin(c / Math.Sqrt(lever * lever + q * q)) - Math.Atan2(q, lever);
        // Level, the saddle stands at q: a higher one wants the neck to lean back.
        return Of(c > q && pocket.AngleBy == AngleMaking.Wedge ? p + seat.HeelLength : p);
    }

    /// <summary>The definition with that measure in force.</summary>
    public static InstrumentDefinition With(InstrumentDefinition d, FreeMeasure measure, double value) => measure switch
    {
        FreeMeasure.Depth => With(d, d.Body.Pocket with { Depth = value }),
        FreeMeasure.Shim => With(d, d.Body.Pocket with { Shim = value }),
        FreeMeasure.Angle => Leaning(d, value),
        FreeMeasure.Above => With(d, d.Body.Pocket with { Depth = DepthFor(d, d.Body.Pocket.Angle, value) }),
        FreeMeasure.Heel => d with { Neck = d.Neck with { Heel = d.Neck.Heel with { Thickness = value } } },
        FreeMeasure.Bridge => d with { Body = d.Body with { Bridge = d.Body.Bridge with { BaseHeight = value } } },
        _ => d,
    };

    /// <summary>Leaned, a pocket keeps its depth, a through-neck its glue plane's height.</summary>
    private static InstrumentDefinition Leaning(InstrumentDefinition d, double angle) => With(d, d.Body.Pocket with
    {
        Angle = angle,
        Depth = d.Neck.Joint == JointKind.Through ? DepthFor(d, angle, new HeightChain(d, []).Above) : d.Body.Pocket.Depth,
    });

    private static double DepthFor(InstrumentDefinition d, double angle, double above) => d.Neck.Heel.Thickness * Math.Cos(angle) - above;

    private static InstrumentDefinition With(InstrumentDefinition d, NeckPocketDefinition pocket) => d with { Body = d.Body with { Pocket = pocket } };

    /// <summary>A measure as the definition has it.</summary>
    public double Given(FreeMeasure measure) => measure switch
    {
        FreeMeasure.Depth => pocket.Depth,
        FreeMeasure.Heel => d.Neck.Heel.Thickness,
        FreeMeasure.Shim => pocket.Shim,
        FreeMeasure.Bridge => d.Body.Bridge.BaseHeight,
        FreeMeasure.Angle => pocket.Angle,
        FreeMeasure.Above => Above,
        _ => Middle,
    };

    /// <summary>Whether the file would allow this value.</summary>
    public static bool IsAllowed(FreeMeasure measure, double value)
    {
        var (least, most) = Range(measure);
        return value >= least - Tolerances.Output && value <= most + Tolerances.Output;
    }

    /// <summary>mm, radians.</summary>
    public static (double Least, double Most) Range(FreeMeasure measure) => measure switch
    {
        FreeMeasure.Depth => FreeRange.Depth,
        FreeMeasure.Heel => FreeRange.Heel,
        FreeMeasure.Shim => FreeRange.Shim,
        FreeMeasure.Bridge => FreeRange.Base,
        FreeMeasure.Above => FreeRange.Above,
        FreeMeasure.Angle => (double.DegreesToRadians(FreeRange.AngleDegrees.Least), double.DegreesToRadians(FreeRange.AngleDegrees.Most)),
        _ => (double.NegativeInfinity, double.PositiveInfinity),
    };
}
