using System.Collections.Immutable;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables <c>[fretboard]</c> and <c>[fretboard.dots]</c>. Defaults are common practice, no source.</summary>
static class FretboardSection
{
    static readonly ImmutableArray<int> MarkedFrets = [3, 5, 7, 9, 12, 15, 17, 19, 21, 24, 27];
    static readonly ImmutableArray<int> DoublyMarked = [12, 24];

    /// <summary>Board outside the outer strings grows toward the body, a side, mm: fingers pull strings over the edge there.</summary>
    const double GuitarEdgeGrowth = 0.3, BassEdgeGrowth = 1.45;

    /// <summary>Playing face: 12 in, and 24 in where many strings make a board so wide that its slots would run out at the edges.</summary>
    const double UsualRadius = 304.8, FlatRadius = 609.6;
    const int ManyStrings = 6;

    public static FretboardDefinition Read(TableReader board, StringFan strings)
    {
        var basis = strings.Basis;
        var wood = board.Word("wood", basis.Woods, "indian-rosewood", "wood of the fretboard");
        var thickness = board.Length("thickness", 4, 10, 6.35, "on the centre line");
        var radius = board.Length("radius", 150, 1000, basis.IsBass && basis.Strings >= ManyStrings ? FlatRadius : UsualRadius, "radius of the playing face at the nut");
        var beyond = board.Length("beyond_last_fret", 3, 30, 6, "board beyond the last fret; the neck's heel ends with it");
        var end = basis.LastFret + beyond;
        var edge = strings.EdgeAtNut + (basis.IsBass ? BassEdgeGrowth : GuitarEdgeGrowth);
        var cut = board.Choice("fret_cut", [("slots", FretCut.Slots), ("scribed-lines", FretCut.ScribedLines)], "slots", "slots the router saws, or shallow lines to saw by hand");
        var scribed = cut == FretCut.ScribedLines;
        return new FretboardDefinition
        {
            Wood = wood,
            Thickness = thickness,
            RadiusAtNut = radius,
            BeyondLastFret = beyond,
            RadiusAtLastFret = board.Length("radius_at_last_fret", 150, 1500, radius, "the same for a plain radius, larger for a compound one"),
            WidthAtEnd = board.Length("width_at_end", 35, 130, Math.Round(strings.SpreadAt(end) + 2 * edge, 1), "at the board's end, which is the heel's: the outer strings and the board beside them"),
            FretCut = cut,
            SlotWidth = board.Length("slot_width", scribed ? 0.1 : 0.4, 1, 0.5842, "fret slot, 0.023 in: the tang's width, less what the barbs need"),
            SlotDepth = board.Length("slot_depth", scribed ? 0.05 : 1, scribed ? 0.4 : 4, scribed ? 0.15 : 2.2, "below the playing face: the tang and 0.3 mm; of a scribed line 0.05 mm to 0.4 mm, default 0.15"),
            FretHeight = board.Length("fret_height", 0.6, 1.8, 1.1, "of a fret's crown above the board"),
            Dots = ReadDots(board.Table("dots"), strings),
        };
    }

    static DotsDefinition ReadDots(TableReader dots, StringFan strings)
    {
        var frets = strings.Basis.Frets;
        var marked = dots.Counts("frets", 1, frets, [.. MarkedFrets.Where(f => f <= frets)], "frets with a dot, half way to the fret before");
        var doubles = dots.Counts("doubles", 1, frets, [.. DoublyMarked.Where(marked.Contains)], "those of them with two dots");
        if (dots.IsSound && doubles.FirstOrDefault(f => !marked.Contains(f)) is > 0 and var stray)
            dots.Refuse("doubles", $"fret {stray} has two dots but is not among `frets`", $"frets out of {string.Join(", ", marked)}", "add it to `frets` or remove it here");
        return new DotsDefinition(marked, doubles,
            dots.Length("diameter", 2, 10, 6, "of a dot"),
            dots.Length("depth", 0.5, 4, 2, "of its seat"),
            dots.Length("double_spacing", 8, 60, Math.Round(strings.SpreadAt(strings.Basis.Scale / 2), 0) / 2, "between the two of a pair: half the strings' spread at fret 12"));
    }
}
