using System.Collections.Immutable;
using Solidbody.Instrument.Bodies;
using Solidbody.Instrument.Fretboards;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Playing;

/// <summary>Where one string runs; right-handed plan, mm.</summary>
/// <param name="String">From 1, the lowest.</param>
/// <param name="Scale">In the neck's direction.</param>
/// <param name="Length">Along the string, nut to scale line.</param>
/// <param name="NutY">In the nut, from the centre line toward the treble side.</param>
/// <param name="SaddleX">Its place on the scale line, from the nut line's middle, before compensation.</param>
/// <param name="SaddleY">From the centre line toward the treble side.</param>
public sealed record StringPlace(int String, double Scale, double Length, double NutY, double SaddleX, double SaddleY)
{
    /// <summary>Every string, from the lowest.</summary>
    internal static ImmutableArray<StringPlace> All(InstrumentDefinition d)
    {
        var (strings, bridge) = (Strings.Of(d), BridgePlace.Of(d));
        return [.. Enumerable.Range(0, strings.Count).Select(i => new StringPlace(i + 1, strings.ScaleOf(i), strings.Length(i), strings.NutY(i), bridge.Saddle(strings, i).X, strings.BridgeY(i)))];
    }
}

/// <summary>Where one fret lies: its distance from the nut line along the neck, mm.</summary>
/// <param name="Fret">0 is the nut line.</param>
/// <param name="Bass">Under the lowest string, from where that string leaves the nut.</param>
/// <param name="Middle">On the centre line.</param>
/// <param name="Treble">Under the highest string.</param>
/// <param name="EdgeBass">Board outside the lowest string there.</param>
/// <param name="EdgeTreble">Board outside the highest.</param>
public sealed record FretPlace(int Fret, double Bass, double Middle, double Treble, double EdgeBass, double EdgeTreble)
{
    internal static ImmutableArray<FretPlace> All(InstrumentDefinition d)
    {
        var layout = FretLayout.Of(d);
        return [.. Enumerable.Range(0, d.Frets + 1).Select(n => new FretPlace(n,
            FretTable.Position(layout.Strings.ScaleOf(0), n), layout.Fret(n).Middle, FretTable.Position(layout.Strings.ScaleOf(d.Strings - 1), n),
            StringEdges.At(layout, n, -1), StringEdges.At(layout, n, +1)))];
    }
}
