using System.Collections.Immutable;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Playing;

/// <summary>One string's straight line over the frets.</summary>
/// <param name="NutX">Where its speaking length begins, mm: 0 but on a fan.</param>
/// <param name="Length">From there to the scale line, mm.</param>
/// <param name="Nut">Underside at the nut, above the plane of the fret tops on the centre line, mm.</param>
/// <param name="Saddle">Underside at the scale line, above that plane.</param>
/// <param name="FretX">Frets from its nut, mm: fret 1 first.</param>
/// <param name="FretTop">Their tops under this string, above that plane.</param>
public sealed record StringLay(double NutX, double Length, double Nut, double Saddle, ImmutableArray<double> FretX, ImmutableArray<double> FretTop)
{
    private const int Octave = 12;

    /// <summary>Every string, from the lowest: each has the height asked for over fret 12, and its saddle follows.</summary>
    public static ImmutableArray<StringLay> Of(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        var (strings, face, line, action) = (Strings.Of(d), FretboardMaker.Face(d), NeckLine.Of(d), d.Action);
        return [.. Enumerable.Range(0, d.Strings).Select(i =>
        {
            var (length, from) = (strings.ScaleOf(i), strings.Nut(i).X);
            double Top(double x) => line.Height(from + x) - RadiusedFace.Crown(face.Radius(from + x), strings.Y(i, from + x));
            var share = d.Strings == 1 ? 0 : (double)i / (d.Strings - 1);
            var wanted = action.At12Bass + (action.At12Treble - action.At12Bass) * share;
            ImmutableArray<double> frets = [.. Enumerable.Range(1, d.Frets).Select(n => FretTable.Position(length, n))];
            var octave = FretTable.Position(length, Octave);
            // A zero fret carries the string as every fret does.
            var nut = Top(0) + (d.Nut.ZeroFretSetBack is null ? action.NutHeight : 0);
            // Through the nut and the height asked for over fret 12, straight on.
            var saddle = nut + (Top(octave) + wanted - nut) * length / octave;
            return new StringLay(from, length, nut, saddle, frets, [.. frets.Select(Top)]);
        })];
    }

    /// <summary>Open string's underside over a fret's top, mm.</summary>
    public double Over(int fret) => Height(0, Nut, FretX[fret - 1]) - FretTop[fret - 1];

    /// <summary>How far the string may swing at its middle before it meets a fret, whichever fret it is pressed at; and which two those are.</summary>
    /// <remarks>A string that swings in its fundamental stands a·sin(π u) from rest at the part u of its length; with the room c over a fret there, a = c / sin(π u).
    /// N. H. Fletcher, T. D. Rossing, The Physics of Musical Instruments, ch. 2 (the shape of the fundamental; from memory).</remarks>
    public (double Swing, int Pressed, int Meets) Room()
    {
        var least = (Swing: double.PositiveInfinity, Pressed: 0, Meets: 0);
        for (var m = 0; m < FretX.Length; m++)
        {
            var (x, z) = m == 0 ? (0, Nut) : (FretX[m - 1], FretTop[m - 1]);
            for (var n = m + 1; n <= FretX.Length; n++)
            {
                var swing = (Height(x, z, FretX[n - 1]) - FretTop[n - 1]) / Math.Sin(Math.PI * (FretX[n - 1] - x) / (Length - x));
                if (swing < least.Swing) least = (swing, m, n);
            }
        }
        return least;
    }

    private double Height(double fromX, double fromZ, double x) => fromZ + (Saddle - fromZ) * (x - fromX) / (Length - fromX);
}
