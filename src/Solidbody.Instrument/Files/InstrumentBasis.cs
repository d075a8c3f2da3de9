using System.Collections.Immutable;

namespace Solidbody.Instrument.Files;

/// <summary>What every other default hangs on.</summary>
/// <param name="Scale">mm.</param>
sealed record InstrumentBasis(Hand Hand, int Strings, double Scale, int Frets)
{
    /// <summary>From here on an instrument is taken for a bass: 30 in, common practice, no source.</summary>
    public const double BassScale = 762;

    /// <summary>Keys of the woods that may be named: the table's and the file's own.</summary>
    public ImmutableArray<string> Woods { get; init; } = [];

    public bool IsBass => Scale >= BassScale;

    /// <summary>Distance of the last fret from the nut, mm.</summary>
    public double LastFret => AtFret(Frets);

    /// <summary>Distance of a fret from the nut, mm; twelve equal steps to the octave.</summary>
    public double AtFret(double fret) => Scale * (1 - Math.Pow(2, -fret / 12));

    /// <summary>The fret, in parts too, at a distance from the nut.</summary>
    public double FretAt(double x) => -12 * Math.Log2(1 - x / Scale);
}

/// <summary>The strings' spread along the neck.</summary>
/// <param name="BridgeSpread">First to last string at the scale line, mm.</param>
sealed record StringFan(InstrumentBasis Basis, NutDefinition Nut, double BridgeSpread)
{
    /// <summary>First to last string at a distance from the nut, mm.</summary>
    public double SpreadAt(double x) => Nut.StringSpread + (BridgeSpread - Nut.StringSpread) * x / Basis.Scale;

    /// <summary>Board outside the outer string at the nut, mm.</summary>
    public double EdgeAtNut => (Nut.Width - Nut.StringSpread) / 2;
}
