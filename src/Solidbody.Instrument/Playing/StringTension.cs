using System.Collections.Immutable;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>A string at pitch: how hard it pulls, how near it is to breaking, how it feels to the finger.</summary>
/// <param name="Number">From 1, the lowest.</param>
public sealed record StringTension(int Number, StringDefinition String, StringPull Pull)
{
    /// <summary>How a person finds it: <c>string E4 (6 from the lowest)</c>.</summary>
    public string Name => FormattableString.Invariant($"string {NoteName.Of(String.Note)} ({Number} from the lowest)");

    /// <summary>Of the wire that carries the pull; null where that wire is unknown or outside the table.</summary>
    public WireStrength? Strength => Pull.CoreDiameter is { } diameter ? MusicWire.StrengthAt(diameter) : null;
    /// <summary>Stress as a share of the least strength its wire must have; 1 breaks.</summary>
    public double? Share => Pull.Stress / Strength?.Least;
    /// <summary>Pull that breaks the weakest wire of that diameter, N.</summary>
    public double? BreakLoad => Strength?.Least * Pull.Area;
    /// <summary>Pitch at which it breaks, Hz: the pull grows with the square of the pitch.</summary>
    public double? BreakPitch => Share is { } share ? Pull.Pitch / Math.Sqrt(share) : null;
    /// <summary>From its pitch to that one, semitones.</summary>
    public double? SemitonesToBreak => Share is { } share ? -6 * Math.Log2(share) : null;

    /// <summary>E A of the wire that carries the pull, N: what pulls it one length longer. The wrap of a wound string carries nothing along it.</summary>
    public double? Stiffness => MusicWire.YoungsModulus * Pull.Area;
    /// <summary>How much longer it is at pitch, a part of its length: a string of little strain answers a bend with much pitch.</summary>
    public double? Strain => Pull.Tension / Stiffness;
    /// <summary>Sideways yield at its middle to a light push, mm/N: L / (4 T).</summary>
    public double Yield => Pull.Length / (4 * Pull.Tension);

    /// <summary>Sideways push at the open string's middle that raises it a whole tone.</summary>
    /// <remarks>The pull must grow by 2^(2·2/12): strain ε = ΔT / EA; the two halves of length L/2 become (1 + ε) L/2, so y = (L/2) √((1 + ε)² − 1)
    /// and F = 2 T′ y / ((1 + ε) L/2). Only what lies between nut and saddle stretches: string beyond them makes the real way longer.</remarks>
    public ToneBend? WholeTone
    {
        get
        {
            if (Stiffness is not { } stiffness) return null;
            var (raised, half) = (Pull.Tension * WholeToneRatio, Pull.Length / 2);
            var stretch = 1 + (raised - Pull.Tension) / stiffness;
            var way = half * Math.Sqrt((stretch - 1) * (stretch + 1));
            return new(way, 2 * raised * way / (stretch * half));
        }
    }

    /// <summary>The pull of a string raised by a whole tone, over its pull before: two semitones, squared.</summary>
    public static double WholeToneRatio { get; } = Math.Pow(2, 2 * 2 / 12.0);

    /// <summary>Every string's, from the lowest; empty when the file does not describe the strings.</summary>
    public static ImmutableArray<StringTension> All(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        return [.. StringPull.All(d).Select((pull, i) => new StringTension(i + 1, d.Tuning!.Strings[i], pull))];
    }
}

/// <param name="Way">mm.</param>
/// <param name="Push">N.</param>
public sealed record ToneBend(double Way, double Push);
