using System.Collections.Immutable;
using Solidbody.Instrument.Fretboards;

namespace Solidbody.Instrument.Files;

/// <summary>What every other default hangs on.</summary>
/// <param name="Scale">Of the centre line, mm.</param>
/// <param name="Fan">Null for a single scale.</param>
sealed record InstrumentBasis(Hand Hand, int Strings, double Scale, int Frets, FanDefinition? Fan = null)
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

    /// <summary>The strings themselves, at equal centres.</summary>
    public Necks.Strings Lines { get; } = Necks.Strings.Of(Basis.Strings, Basis.Scale, Basis.Fan, Nut, BridgeSpread, null);

    /// <summary>Where the frets lie on such a board. Spacing at the nut does not change that.</summary>
    public FretLayout Layout(FretboardDefinition board) => new()
    {
        Strings = Lines,
        Frets = Basis.Frets,
        Nut = Nut,
        Board = board,
    };

    /// <summary>Board outside the outer string at the nut, mm.</summary>
    public double EdgeAtNut => (Nut.Width - Nut.StringSpread) / 2;
}
