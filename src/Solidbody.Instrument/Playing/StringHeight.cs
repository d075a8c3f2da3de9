using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Playing;

/// <summary>How high the strings lie, and whether the bridge's saddles can carry them there.</summary>
internal static class StringHeight
{
    /// <summary>Least room over fret 1 of an open string, and least swing at a string's middle before it meets a fret, mm.</summary>
    public const double LeastOverFret1 = 0.2, LeastSwing = 0.5;

    /// <summary>The definition with its free measure worked out; unchanged, with a finding, when that measure cannot be made.</summary>
    public static (InstrumentDefinition Definition, ImmutableArray<Finding> Findings) Solve(InstrumentDefinition d)
    {
        if (d.Action.Free == FreeMeasure.Saddle || d.Strings < 1) return (d, []);
        // Nothing solved for has a say in how the strings lie over the frets.
        var value = new HeightChain(d, StringLay.Of(d)).Solved(d.Action.Free);
        return HeightChain.IsAllowed(d.Action.Free, value) ? (HeightChain.With(d, d.Action.Free, value), []) : (d, [HeightFindings.CannotBeMade(d.Action.Free, value)]);
    }

    public static (StringHeights Heights, ImmutableArray<Finding> Findings) Of(InstrumentDefinition d, ImmutableArray<StringLay> lays)
    {
        var chain = new HeightChain(d, lays);
        var bridge = d.Body.Bridge;
        var (lowest, highest) = (bridge.BaseHeight + bridge.SaddleLowest, bridge.BaseHeight + bridge.SaddleLowest + bridge.SaddleRise);
        var heights = new StringHeights(
            [.. lays.Select((l, i) => Figure(i + 1, l, chain))],
            d.Body.Pocket.Angle, NeckSeat.Of(d).Wedge, lowest, highest, NeckSeat.ScaleLine(d), NeckSeat.Of(d).Z(NeckSeat.Of(d).HeelEnd, d.Neck.Heel.Thickness));
        return (heights, [.. Check(d, heights, chain)]);
    }

    private static StringHeightFigure Figure(int number, StringLay lay, HeightChain chain)
    {
        var (swing, pressed, meets) = lay.Room();
        return new(number, lay.Over(1), lay.Over(12), lay.Over(lay.FretX.Length), chain.SaddleZ(lay), swing, pressed, meets);
    }

    private static IEnumerable<Finding> Check(InstrumentDefinition d, StringHeights heights, HeightChain chain)
    {
        var (low, high) = (heights.Strings.MinBy(s => s.SaddleHeight)!, heights.Strings.MaxBy(s => s.SaddleHeight)!);
        var (apart, most) = (high.SaddleHeight - low.SaddleHeight, heights.HighestSaddle - heights.LowestSaddle);
        if (d.Action.Free != FreeMeasure.Saddle && Math.Abs(chain.TooHigh) <= Tolerances.Output) yield return HeightFindings.Follows(d.Action.Free, chain.Given(d.Action.Free));
        if (heights.Wedge > 0) yield return HeightFindings.Wedge(heights.NeckAngle, heights.Wedge, d.Body.Pocket.Length);
        var wrong = low.SaddleHeight >= heights.LowestSaddle ? high : low;
        if (!(apart <= most)) yield return HeightFindings.RangeTooShort(low.String, high.String, apart, most);
        else if (!(low.SaddleHeight >= heights.LowestSaddle && high.SaddleHeight <= heights.HighestSaddle))
            yield return HeightFindings.SaddleOutOfRange(wrong.String, wrong.SaddleHeight, heights.LowestSaddle, heights.HighestSaddle, HeightRemedies.Of(d, chain));
        if (d.Nut.ZeroFretSetBack is null && heights.Strings.MinBy(s => s.OverFret1)! is var first && !(first.OverFret1 >= LeastOverFret1)) yield return HeightFindings.NutTooLow(first.String, first.OverFret1);
        if (heights.Strings.MinBy(s => s.Swing)! is var tight && !(tight.Swing >= LeastSwing)) yield return HeightFindings.FretsInTheWay(tight.String, tight.Pressed, tight.Meets, tight.Swing);
    }
}
