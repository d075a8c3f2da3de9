using System.Collections.Immutable;
using System.Globalization;

namespace Solidbody.Instrument.Fretboards;

/// <summary>What is measured on the cut fretboard.</summary>
internal static class FretboardMeasures
{
    /// <summary>A slot is looked for this far to both sides, mm: less than the wood between a slot and a dot.</summary>
    private const double SlotSearch = 1;

    public static ImmutableArray<Measure> Of(InstrumentDefinition d, FretLayout layout, RadiusedFace face, ImmutableArray<Hole> dots)
    {
        var board = d.Fretboard;
        var measures = ImmutableArray.CreateBuilder<Measure>();
        foreach (var (y, where) in Lines(board, layout))
        {
            var nut = layout.Fret(0).At(y);
            for (var n = 1; n <= d.Frets; n++)
            {
                var x = layout.Fret(n).X(y);
                measures.Add(new($"fret {n} from the nut{where}", x - nut.X, Take.Tolerance,
                    new Caliper.InsideCentre(nut, Take.AlongX, x - nut.X, face.Z(x, y) - board.SlotDepth / 2, SlotSearch)));
            }
        }
        foreach (var n in (int[])[1, 12, d.Frets])
        {
            if (n > d.Frets) continue;
            var (before, x) = (FretTable.Position(d.Scale, n - 1), FretTable.Position(d.Scale, n));
            // A quarter of the gap before the fret: clear of its slot and of a dot in the middle.
            if (n != d.Frets)
                measures.Add(new($"board thickness at fret {n}, centre line", board.Thickness, Take.Tolerance, new Caliper.Thickness(new(x - (x - before) / 4, 0))));
            measures.Add(new($"depth of fret {(board.FretCut == FretCut.Slots ? "slot" : "line")} {n}, centre line", board.SlotDepth, Take.Tolerance, new Caliper.DepthFromTop(new(x, 0), board.Thickness)));
        }
        double Corner(CrossLine line, int side) => layout.AtEdge(line, side).X;
        var (first, last) = (Math.Max(Corner(layout.NutFace, -1), Corner(layout.NutFace, +1)), Math.Min(Corner(layout.BoardEnd, -1), Corner(layout.BoardEnd, +1)));
        foreach (var (name, x) in ((string, double)[])[("board width at the nut", first + Take.InsideEnd), ("board width at its end", last - Take.InsideEnd)])
        {
            var half = layout.HalfWidth(x);
            measures.Add(new(name, 2 * half, Take.Tolerance, new Caliper.Outside(new(x, 0), Take.AlongY, face.Z(x, half) / 2, 2 * half)));
        }
        foreach (var dot in dots)
        {
            var z = (dot.Mouth + dot.Reach) / 2;
            measures.Add(new($"{dot.Name} from the nut", dot.Centre.X, Take.Tolerance, Take.HoleX(dot, z)));
            measures.Add(new($"{dot.Name} from the centre line", dot.Centre.Y, Take.Tolerance, Take.HoleY(dot, z)));
            measures.Add(new($"depth of {dot.Name}", board.Dots.Depth, Take.Tolerance, new Caliper.DepthFromTop(dot.Centre, dot.Mouth)));
        }
        return measures.ToImmutable();
    }

    /// <summary>The lines along the board that slots are measured on, from the nut line: one beside the single dots and inside the double ones;
    /// on a fan two, where the outer strings leave the nut, for a slanted slot may be right on one alone.</summary>
    private static ImmutableArray<(double Y, string Where)> Lines(FretboardDefinition board, FretLayout layout)
    {
        if (!layout.IsFanned) return [((board.Dots.Diameter / 2 + Math.Max(board.Dots.DoubleSpacing - board.Dots.Diameter, board.Dots.Diameter) / 2) / 2, "")];
        var y = layout.Nut.StringSpread / 2;
        var far = Math.Round(y, 1).ToString(CultureInfo.InvariantCulture);
        return [(-y, $", {far} mm to the bass side"), (y, $", {far} mm to the treble side")];
    }
}
