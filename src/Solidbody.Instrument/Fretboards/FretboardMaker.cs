using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Instrument.Fretboards;

/// <summary>The fretboard as a part: tapered plan, radiused face, fret slots, dots. Datum: its underside.</summary>
internal static class FretboardMaker
{
    /// <summary>Fret slots run out this far beyond the board's edge, mm.</summary>
    private const double SlotRunOut = 1;

    public static RadiusedFace Face(InstrumentDefinition d) => new(d.Fretboard.Thickness, d.Fretboard.RadiusAtNut,
        (d.Fretboard.RadiusAtLastFret - d.Fretboard.RadiusAtNut) / FretTable.Position(d.Scale, d.Frets));

    /// <summary>Half width of board and neck at x, mm.</summary>
    public static double HalfWidth(InstrumentDefinition d, double x) => FretLayout.Of(d).HalfWidth(x);

    public static double HalfWidthGain(InstrumentDefinition d) => FretLayout.Of(d).HalfWidthGain;

    public static Part Make(InstrumentDefinition d)
    {
        var (layout, face) = (FretLayout.Of(d), Face(d));
        var (nut, end) = (layout.NutFace, layout.BoardEnd);
        var plan = new Region(Loop.Of([layout.AtEdge(nut, -1), layout.AtEdge(end, -1), layout.AtEdge(end, +1), layout.AtEdge(nut, +1)]));
        var dots = Dots(d, layout, face);
        return new()
        {
            Name = "fretboard",
            Wood = d.Fretboard.Wood,
            Outline = plan,
            Front = face,
            Back = new LevelHeight(0),
            FrontFinish = FaceFinish.SurfacedAlong,
            BackFinish = FaceFinish.AsPlaned,
            Bounds = new(plan.Bounds.X0, plan.Bounds.Y0, 0, plan.Bounds.X1, plan.Bounds.Y1, d.Fretboard.Thickness),
            Slots = [.. Enumerable.Range(0, d.Frets + 1).Where(n => n > 0 || d.Nut.ZeroFretSetBack is not null).Select(n => Slot(d.Fretboard, layout, n))],
            Holes = dots,
            Measures = FretboardMeasures.Of(d, layout, face, dots),
            TabPlaces = [.. ((double[])[0.2, 0.8]).SelectMany(s => (Point2[])[layout.AtEdge(new(s * end.Middle, 0), +1), layout.AtEdge(new(s * end.Middle, 0), -1)])],
        };
    }

    private static Slot Slot(FretboardDefinition board, FretLayout layout, int fret)
    {
        var line = layout.Fret(fret);
        // A blind slot's end is round, as its cutter: the axis stops half a width sooner.
        Point2 End(int side) => board.BlindSlotsInside is { } inside
            ? layout.InsideEdge(line, side, inside + board.SlotWidth / 2)
            : layout.AtEdge(line, side) + side * SlotRunOut * line.Along;
        return new(SlotName(fret), End(-1), End(+1), board.SlotWidth, board.SlotDepth, board.FretCut == FretCut.ScribedLines);
    }

    public static string SlotName(int fret) => fret == 0 ? "zero fret" : $"fret {fret}";

    /// <summary>Dots half way to the fret before, flat floors at their depth below the face over their middle.</summary>
    private static ImmutableArray<Hole> Dots(InstrumentDefinition d, FretLayout layout, RadiusedFace face)
    {
        var dots = d.Fretboard.Dots;
        var holes = ImmutableArray.CreateBuilder<Hole>();
        foreach (var fret in dots.Frets.Where(n => n >= 1 && n <= d.Frets))
        {
            var isDouble = dots.Doubles.Contains(fret);
            foreach (var (name, y) in isDouble
                ? ((string, double)[])[($"dot {fret} bass", -dots.DoubleSpacing / 2), ($"dot {fret} treble", dots.DoubleSpacing / 2)]
                : [($"dot {fret}", 0.0)])
            {
                var x = (layout.Fret(fret - 1).X(y) + layout.Fret(fret).X(y)) / 2;
                var mouth = face.Z(x, y);
                holes.Add(new(name, Side.Front, new(x, y), dots.Diameter, mouth, mouth - dots.Depth, mouth - dots.Depth));
            }
        }
        return holes.ToImmutable();
    }
}
