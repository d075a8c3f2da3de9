using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Playing;

/// <summary>A string in its own upright plane, x from the nut and y up, mm: open, and pressed behind each fret. Lengths are exact.</summary>
/// <param name="Nut">Where it leaves the nut.</param>
/// <param name="Saddle">Where it leaves the saddle.</param>
/// <param name="Frets">Tops, fret 1 first.</param>
/// <param name="Finger">How far behind the fret the finger holds it, along x; no further than half way to the fret before.</param>
/// <remarks>The pressed string runs from the saddle over the fret and straight on to the finger, then to the nut: Anderson and Beausoleil (see <see cref="StiffString"/>), app. "Fretting".
/// Pressing harder than that changes nothing, they find: the string is held by the fret.</remarks>
public sealed record FrettedString(Point2 Nut, Point2 Saddle, ImmutableArray<Point2> Frets, double Finger)
{
    /// <summary>They measure 5 to 6 mm behind the fret on a photograph.</summary>
    public const double UsualFinger = 5;

    public static FrettedString Of(StringLay lay)
    {
        ArgumentNullException.ThrowIfNull(lay);
        return new(new(0, lay.Nut), new(lay.Length, lay.Saddle), [.. lay.FretX.Select((x, i) => new Point2(x, lay.FretTop[i]))], UsualFinger);
    }

    /// <summary>The same string with its saddle moved toward the tail and its nut toward the bridge.</summary>
    public FrettedString Moved(double saddleBack, double nutForth) => this with { Nut = Nut + new Point2(nutForth, 0), Saddle = Saddle + new Point2(saddleBack, 0) };

    public double Open => Nut.DistanceTo(Saddle);

    /// <summary>Fret to saddle.</summary>
    public double Sounding(int fret) => Frets[fret - 1].DistanceTo(Saddle);

    /// <summary>How much longer the whole string is when pressed, as a share of the open length.</summary>
    public double Stretch(int fret)
    {
        var (top, before) = (Frets[fret - 1], fret > 1 ? Frets[fret - 2] : Nut);
        var back = Math.Min(Finger, (top.X - before.X) / 2);
        var held = top - back / (Saddle.X - top.X) * (Saddle - top);
        return (top.DistanceTo(Saddle) + top.DistanceTo(held) + held.DistanceTo(Nut) - Open) / Open;
    }
}
