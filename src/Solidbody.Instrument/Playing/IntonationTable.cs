using System.Collections.Immutable;

namespace Solidbody.Instrument.Playing;

/// <summary>Where the saddles stand for the notes to be true, and how true they are.</summary>
/// <param name="Strings">Those whose springing wire is known, from the lowest.</param>
/// <param name="BridgeShift">How far the bridge goes toward the tail for the saddles to stand about the middle of their travel, mm.</param>
/// <param name="BridgeAt">Body x of the bridge's front edge then, mm.</param>
public sealed record IntonationTable(ImmutableArray<IntonedString> Strings, double BridgeShift, double BridgeAt);

/// <param name="String">From 1, the lowest.</param>
/// <param name="Name">How a person finds it.</param>
/// <param name="SaddleSetBack">Saddle behind the scale line with the least mean square of cents over all frets, mm.</param>
/// <param name="SetBackForOctave">Saddle behind the scale line that makes fret 12 true, mm; the nut not moved.</param>
/// <param name="NutShift">Nut slot toward the bridge, mm; 0 on a nut that is not compensated.</param>
/// <param name="Inharmonicity">B of the open string.</param>
/// <param name="Before">Cents sharp at each fret, saddle on the scale line: fret 1 first.</param>
/// <param name="After">With saddle and nut where they shall be.</param>
public sealed record IntonedString(int String, string Name, double SaddleSetBack, double SetBackForOctave, double NutShift, double Inharmonicity, ImmutableArray<double> Before, ImmutableArray<double> After)
{
    /// <summary>Root of the mean square, cents.</summary>
    public double RmsBefore => Rms(Before);
    public double RmsAfter => Rms(After);
    /// <summary>The fret furthest from true, and by how many cents.</summary>
    public (int Fret, double Cents) WorstBefore => Worst(Before);
    public (int Fret, double Cents) WorstAfter => Worst(After);

    private static double Rms(ImmutableArray<double> cents) => Math.Sqrt(cents.Sum(c => c * c) / cents.Length);
    private static (int, double) Worst(ImmutableArray<double> cents) => cents.Select((c, i) => (i + 1, c)).MaxBy(c => Math.Abs(c.c));
}
