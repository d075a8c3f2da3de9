using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument.Bodies;

namespace Solidbody.Instrument.Fretboards;

/// <summary>The fretboard as a part: tapered plan, radiused face, fret slots, dots. Datum: its underside.</summary>
internal static class FretboardMaker
{
    /// <summary>Fret slots run out this far beyond the board's edge, mm.</summary>
    private const double SlotRunOut = 1;

    public static RadiusedFace Face(InstrumentDefinition d) => new(d.Fretboard.Thickness, d.Fretboard.RadiusAtNut,
        (d.Fretboard.RadiusAtLastFret - d.Fretboard.RadiusAtNut) / FretTable.Position(d.Scale, d.Frets));

    /// <summary>Half width of board and neck at x, mm.</summary>
    public static double HalfWidth(InstrumentDefinition d, double x) => d.Nut.Width / 2 + HalfWidthGain(d) * x;

    public static double HalfWidthGain(InstrumentDefinition d) => (d.Fretboard.WidthAtEnd - d.Nut.Width) / 2 / NeckJoint.Of(d).HeelEnd;

    public static Part Make(InstrumentDefinition d)
    {
        var (board, face, end) = (d.Fretboard, Face(d), NeckJoint.Of(d).HeelEnd);
        var (atNut, atEnd) = (d.Nut.Width / 2, board.WidthAtEnd / 2);
        var dots = Dots(d, face);
        return new()
        {
            Name = "fretboard",
            Wood = board.Wood,
            Outline = new(Loop.Of([new(0, -atNut), new(end, -atEnd), new(end, atEnd), new(0, atNut)])),
            Front = face,
            Back = new LevelHeight(0),
            FrontFinish = FaceFinish.SurfacedAlong,
            BackFinish = FaceFinish.AsPlaned,
            Bounds = new(0, -Math.Max(atNut, atEnd), 0, end, Math.Max(atNut, atEnd), board.Thickness),
            Slots = [.. Enumerable.Range(1, d.Frets).Select(n => Slot(d, n))],
            Holes = dots,
            Measures = FretboardMeasures.Of(d, face, dots),
            TabPlaces = [.. ((double[])[0.2, 0.8]).SelectMany(s => (Point2[])[new(s * end, HalfWidth(d, s * end)), new(s * end, -HalfWidth(d, s * end))])],
        };
    }

    private static Slot Slot(InstrumentDefinition d, int fret)
    {
        var x = FretTable.Position(d.Scale, fret);
        var half = HalfWidth(d, x) + SlotRunOut;
        return new($"fret {fret}", new(x, -half), new(x, half), d.Fretboard.SlotWidth, d.Fretboard.SlotDepth, d.Fretboard.FretCut == FretCut.ScribedLines);
    }

    /// <summary>Dots half way to the fret before, flat floors at their depth below the face over their middle.</summary>
    private static ImmutableArray<Hole> Dots(InstrumentDefinition d, RadiusedFace face)
    {
        var dots = d.Fretboard.Dots;
        var holes = ImmutableArray.CreateBuilder<Hole>();
        foreach (var fret in dots.Frets.Where(n => n >= 1 && n <= d.Frets))
        {
            var x = (FretTable.Position(d.Scale, fret - 1) + FretTable.Position(d.Scale, fret)) / 2;
            var isDouble = dots.Doubles.Contains(fret);
            foreach (var (name, y) in isDouble
                ? ((string, double)[])[($"dot {fret} bass", -dots.DoubleSpacing / 2), ($"dot {fret} treble", dots.DoubleSpacing / 2)]
                : [($"dot {fret}", 0.0)])
            {
                var mouth = face.Z(x, y);
                holes.Add(new(name, Side.Front, new(x, y), dots.Diameter, mouth, mouth - dots.Depth, mouth - dots.Depth));
            }
        }
        return holes.ToImmutable();
    }
}
