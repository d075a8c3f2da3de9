using System.Collections.Immutable;

namespace Solidbody.Instrument.Playing;

/// <summary>Where the saddles stand for the notes to be true, and how true they are.</summary>
/// <param name="Strings">Those whose springing wire is known, from the lowest.</param>
/// <param name="BridgeShift">How far the bridge goes toward the tail for the saddles to stand about the middle of their travel, mm.</param>
/// <param name="BridgeAt">Body x of the bridge's front edge then, mm.</param>
public sealed record IntonationTable(ImmutableArray<IntonedString> Strings, double BridgeShift, double BridgeAt);

/// <param name="String">From 1, the lowest.</param>
/// <param name="SetBack">Saddle behind the scale line with the least mean square of cents over all frets, mm.</param>
/// <param name="SetBackForOctave">Saddle behind the scale line that makes fret 12 true, mm; the nut not moved.</param>
/// <param name="NutShift">Nut slot toward the bridge, mm; 0 on a nut that is not compensated.</param>
/// <param name="Inharmonicity">B of the open string.</param>
/// <param name="Before">Cents sharp at each fret, saddle on the scale line: fret 1 first.</param>
/// <param name="After">With saddle and nut where they shall be.</param>
public sealed record IntonedString(int String, double SetBack, double SetBackForOctave, double NutShift, double Inharmonicity, ImmutableArray<double> Before, ImmutableArray<double> After)
{
    /// <summary>Root of the mean square of what is left, cents.</summary>
    public double Rms => Math.Sqrt(After.Sum(c => c * c) / After.Length);
    /// <summary>The fret furthest from true.</summary>
    public int WorstFret => After.Select((c, i) => (Math.Abs(c), i + 1)).Max().Item2;
    public double Worst => After[WorstFret - 1];
}
