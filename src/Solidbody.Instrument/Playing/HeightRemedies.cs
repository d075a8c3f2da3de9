using System.Globalization;
using Solidbody.Instrument.Checks;

namespace Solidbody.Instrument.Playing;

/// <summary>What brings the saddles to the middle of the bridge's range, one change at a time: each by how much, and to what.</summary>
internal static class HeightRemedies
{
    public static string Of(InstrumentDefinition d, HeightChain chain)
    {
        var ways = new List<string>();
        void Offer(FreeMeasure measure, Func<double, string> say)
        {
            if (measure.IsOf(d.Neck.Joint) && chain.Solved(measure) is var value && HeightChain.IsAllowed(measure, value)) ways.Add(say(value));
        }
        var (pocket, heel) = (d.Body.Pocket, d.Neck.Heel);
        Offer(FreeMeasure.Above, v => $"let the neck's glue plane stand {Say.Mm(Math.Abs(chain.TooHigh))} {(chain.TooHigh < 0 ? "higher" : "lower")} over the body's front, at {Say.Mm(v)}");
        Offer(FreeMeasure.Depth, v => $"cut the pocket {Say.Mm(Math.Abs(v - pocket.Depth))} {(v > pocket.Depth ? "deeper" : "shallower")}, to {Say.Mm(v)}");
        Offer(FreeMeasure.Shim, v => v > pocket.Shim ? $"put a shim of {Say.Mm(v)} under the heel" : $"take the shim down to {Say.Mm(v)}");
        Offer(FreeMeasure.Angle, v => $"{(v > pocket.Angle ? "lean the neck back" : "straighten the neck")} by {Degrees(Math.Abs(v - pocket.Angle))}, to {Degrees(v)}");
        Offer(FreeMeasure.Heel, v => $"make the heel {Say.Mm(Math.Abs(v - heel.Thickness))} {(v > heel.Thickness ? "thicker" : "thinner")}, {Say.Mm(v)}");
        Offer(FreeMeasure.Bridge, v => $"stand the bridge {Say.Mm(v)} above the front");
        ways.Add($"take a bridge whose saddles carry the strings {Say.Mm(Math.Abs(chain.TooHigh))} {(chain.TooHigh > 0 ? "higher" : "lower")}");
        return string.Join("; or ", ways) + ".";
    }

    public static string Degrees(double angle) => double.RadiansToDegrees(angle).ToString("0.00", CultureInfo.InvariantCulture) + "°";
}
