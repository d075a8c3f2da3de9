using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument.Bodies;
using Solidbody.Materials;

namespace Solidbody.Instrument.Playing;

/// <summary>Sets every saddle back, and every nut slot forth where asked for, so that the mean square of cents over all frets is least.</summary>
internal static class Intonation
{
    /// <summary>Travel kept at both ends, mm; cents left at a fret; and a nut slot's move, mm. Common practice, no source.</summary>
    public const double TravelMargin = 1, MostCents = 5, MostNutShift = 1.5;

    private const int Octave = 12;
    /// <summary>A cent as a share of the frequency.</summary>
    internal static readonly double PerCent = Math.Log(2) / 1200;

    /// <returns>Null, without a finding, when the strings are not described: TENSION-01 says so.</returns>
    public static (IntonationTable? Table, ImmutableArray<Finding> Findings) Of(InstrumentDefinition d, ImmutableArray<StringLay> lays)
    {
        if (d.Tuning is null) return (null, []);
        var strings = StringTension.All(d).Zip(lays).ToList();
        ImmutableArray<IntonedString> intoned = [.. strings.Where(s => s.First.Strain is not null).Select(s => Of(s.First, FrettedString.Of(s.Second), d.Nut.Compensated))];
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (strings.Where(s => s.First.Strain is null).Select(s => s.First.Number).ToList() is { Count: > 0 } unknown) findings.Add(IntonationFindings.CoreUnknown(unknown));
        if (intoned.IsEmpty) return (null, findings.ToImmutable());

        var bridge = d.Body.Bridge;
        var shift = (intoned.Min(s => s.SaddleSetBack) + intoned.Max(s => s.SaddleSetBack) - bridge.SaddleTravelFrom - bridge.SaddleTravelTo) / 2;
        findings.AddRange(Check(bridge, intoned, shift));
        return (new(intoned, shift, NeckSeat.ScaleLine(d) + bridge.PlateFrom + shift), findings.ToImmutable());
    }

    private static IntonedString Of(StringTension s, FrettedString line, bool compensated)
    {
        var pull = s.Pull;
        var stiffness = StiffString.Share(MusicWire.YoungsModulus, pull.CoreDiameter!.Value, pull.Tension, pull.Length);
        return Of(s.Number, s.Name, new(line, 1 / s.Strain!.Value, stiffness), compensated);
    }

    /// <summary>One string, from what it does with its saddle on the scale line.</summary>
    internal static IntonedString Of(int number, string name, StringSharpness plain, bool compensated)
    {
        var frets = plain.Line.Frets.Length;
        ImmutableArray<double> before = [.. Enumerable.Range(1, frets).Select(plain.Cents)];
        var (back, forth) = LeastSquares(before, plain.Line.Open, compensated);
        var set = plain with { Line = plain.Line.Moved(back, forth) };
        return new(number, name, back, StringSharpness.SetBack(plain.Line.Open, plain.Line.Sounding(Octave), StringSharpness.Ratio(Octave), plain.Raised(Octave)), forth,
            StiffString.Inharmonicity(plain.Stiffness), before, [.. Enumerable.Range(1, frets).Select(set.Cents)]);
    }

    /// <summary>Saddle back by S and nut forth by N lower fret n by (1200/ln 2) [(γ − 1) S + N] / L, γ = 2^(n/12), to first order: the least mean square is a linear problem.</summary>
    /// <remarks>Anderson and Beausoleil (see <see cref="StiffString"/>), app. "Compensation by minimizing RMS error", with the exact cents in place of their series. Without a nut to move, N = 0.</remarks>
    internal static (double Back, double Forth) LeastSquares(ImmutableArray<double> cents, double length, bool moveNut)
    {
        double s0 = cents.Length, s1 = 0, s2 = 0, e0 = 0, e1 = 0;
        for (var n = 1; n <= cents.Length; n++)
        {
            var (g, e) = (StringSharpness.Ratio(n) - 1, cents[n - 1] * PerCent);
            (s1, s2, e0, e1) = (s1 + g, s2 + g * g, e0 + e, e1 + g * e);
        }
        if (!moveNut) return (length * e1 / s2, 0);
        var det = s0 * s2 - s1 * s1;
        return (length * (s0 * e1 - s1 * e0) / det, length * (s2 * e0 - s1 * e1) / det);
    }

    private static IEnumerable<Finding> Check(BridgeDefinition bridge, ImmutableArray<IntonedString> strings, double shift)
    {
        var (fore, rear) = (strings.MinBy(s => s.SaddleSetBack)!, strings.MaxBy(s => s.SaddleSetBack)!);
        var (from, to) = (bridge.SaddleTravelFrom + TravelMargin, bridge.SaddleTravelTo - TravelMargin);
        if (!(rear.SaddleSetBack - fore.SaddleSetBack <= to - from)) yield return IntonationFindings.TravelTooShort(fore.String, rear.String, rear.SaddleSetBack - fore.SaddleSetBack, to - from);
        else if (!(fore.SaddleSetBack >= from)) yield return IntonationFindings.OutOfTravel(fore.String, fore.SaddleSetBack, from, to, shift);
        else if (!(rear.SaddleSetBack <= to)) yield return IntonationFindings.OutOfTravel(rear.String, rear.SaddleSetBack, from, to, shift);
        if (strings.Where(s => !(Math.Abs(s.WorstAfter.Cents) <= MostCents)).MaxBy(s => Math.Abs(s.WorstAfter.Cents)) is { } off) yield return IntonationFindings.OffAtFret(off.String, off.WorstAfter.Fret, off.WorstAfter.Cents, off.NutShift != 0);
        if (strings.Where(s => !(Math.Abs(s.NutShift) <= MostNutShift)).MaxBy(s => Math.Abs(s.NutShift)) is { } far) yield return IntonationFindings.NutTooFar(far.String, far.NutShift);
    }
}
