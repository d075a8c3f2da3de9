using System.Collections.Immutable;
using Solidbody.Instrument.Fretboards;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The tables <c>[fretboard]</c> and <c>[fretboard.dots]</c>. Defaults are common practice, no source.</summary>
static class FretboardSection
{
    static readonly ImmutableArray<int> MarkedFrets = [3, 5, 7, 9, 12, 15, 17, 19, 21, 24, 27, 29];
    static readonly ImmutableArray<int> DoublyMarked = [12, 24];

    /// <summary>Board outside the outer strings grows toward the body, a side, mm: fingers pull strings over the edge there.</summary>
    const double GuitarEdgeGrowth = 0.3, BassEdgeGrowth = 1.45;

    /// <summary>Radius of the playing face by number of strings, from four: the wider the board, the flatter, or its slots run out at the edges.</summary>
    static readonly ImmutableArray<double> GuitarRadius = [304.8, 304.8, 304.8, 304.8, 406.4, 508], BassRadius = [304.8, 406.4, 609.6, 609.6, 914.4, 1000];

    /// <summary>Board beyond the last fret that holds together, and that is of any use, mm.</summary>
    public const double LeastBeyond = 3, MostBeyond = 30;

    public static FretboardDefinition Read(TableReader board, StringFan strings)
    {
        var basis = strings.Basis;
        var wood = board.Word("wood", basis.Woods, "indian-rosewood", "wood of the fretboard");
        var thickness = board.Length("thickness", 4, 10, 6.35, "on the centre line");
        var radius = board.Length("radius", 150, 1000, (basis.IsBass ? BassRadius : GuitarRadius)[Math.Clamp(basis.Strings - 4, 0, GuitarRadius.Length - 1)], "radius of the playing face at the nut");
        var beyond = board.Length("beyond_last_fret", LeastBeyond, MostBeyond, 6, "board beyond the last fret, at its nearer end");
        var endKind = board.Choice("end", [("square", BoardEndKind.Square), ("along-last-fret", BoardEndKind.AlongLastFret)], "square", "the board's end toward the bridge; it matters for fanned frets");
        var overhang = board.Length("overhang", 0, 60, 0, "board beyond the heel's end, over the body");
        var cut = board.Choice("fret_cut", [("slots", FretCut.Slots), ("scribed-lines", FretCut.ScribedLines)], "slots", "slots the router saws, or shallow lines to saw by hand");
        var scribed = cut == FretCut.ScribedLines;
        var definition = new FretboardDefinition
        {
            Wood = wood,
            Grain = SeasonsSection.ReadGrain(board, "quarter", "how it is sawn"),
            Thickness = thickness,
            RadiusAtNut = radius,
            BeyondLastFret = beyond,
            End = endKind,
            Overhang = overhang,
            RadiusAtLastFret = board.Length("radius_at_last_fret", 150, 1500, radius, "the same for a plain radius, larger for a compound one"),
            WidthAtEnd = double.NaN,
            FretCut = cut,
            SlotWidth = board.Length("slot_width", scribed ? 0.1 : 0.4, 1, 0.5842, "fret slot, 0.023 in: the tang's width, less what the barbs need"),
            SlotDepth = board.Length("slot_depth", scribed ? 0.05 : 1, scribed ? 0.4 : 4, scribed ? 0.15 : 2.2, "below the playing face: the tang and 0.3 mm; of a scribed line 0.05 mm to 0.4 mm, default 0.15"),
            FretHeight = board.Length("fret_height", 0.6, 1.8, 1.1, "of a fret's crown above the board"),
            BlindSlotsInside = ReadBlindSlots(board),
            Dots = ReadDots(board.Table("dots"), strings),
        };
        return definition with { WidthAtEnd = ReadWidthAtEnd(board, strings, definition) };
    }

    static double? ReadBlindSlots(TableReader board)
    {
        var blind = board.Flag("blind_slots", false, "whether the slots end inside the board's edge, for a binding");
        var inside = board.Length("blind_slots_inside", 0.5, 6, 2, "blind slots: their ends to the board's edge");
        return blind ? inside : null;
    }

    /// <summary>The board at its end, from the width given, the edge given, or the usual edge outside the strings.</summary>
    static double ReadWidthAtEnd(TableReader board, StringFan strings, FretboardDefinition definition)
    {
        var growth = strings.Basis.IsBass ? BassEdgeGrowth : GuitarEdgeGrowth;
        var middle = strings.Basis.LastFret + definition.BeyondLastFret;
        var usual = Math.Round(strings.SpreadAt(middle) + 2 * (strings.EdgeAtNut + growth), 1);
        var width = board.Length("width_at_end", 35, 175, usual, "at the board's end: the outer strings and the board beside them");
        var edge = board.Length("edge_at_last_fret", 0, 20, 0, "outer strings to the board's edge at the last fret; given, the width at the end follows from it; 0 leaves it to the width");
        if (edge <= 0) return width;
        if (board.Has("width_at_end"))
            board.Refuse("edge_at_last_fret", "the board has a width at its end and an edge at the last fret", "one of the two", "give one: the other follows");
        return StringEdges.WidthAtEnd(strings.Layout(definition), edge);
    }

    /// <summary>The usual dot, and the least; board to the slots on both sides together, slot included, mm.</summary>
    const double UsualDot = 6, LeastDot = 2, BesideDot = 1.3;

    /// <summary>The usual dot, or what fits between the highest marked fret and the one before, in half millimetres.</summary>
    static double DotDiameter(StringFan strings, int highest)
    {
        var room = FretTable.Gap(strings.Basis.Scale, highest) * Math.Cos(Math.Atan(strings.Lines.LineSlope(FretTable.Position(1, highest))));
        return Math.Clamp(Math.Floor(2 * (room - BesideDot)) / 2, LeastDot, UsualDot);
    }

    static DotsDefinition ReadDots(TableReader dots, StringFan strings)
    {
        var frets = strings.Basis.Frets;
        var marked = dots.Counts("frets", 1, frets, [.. MarkedFrets.Where(f => f <= frets)], "frets with a dot, half way to the fret before");
        var doubles = dots.Counts("doubles", 1, frets, [.. DoublyMarked.Where(marked.Contains)], "those of them with two dots");
        if (dots.IsSound && doubles.FirstOrDefault(f => !marked.Contains(f)) is > 0 and var stray)
            dots.Refuse("doubles", $"fret {stray} has two dots but is not among `frets`", $"frets out of {string.Join(", ", marked)}", "add it to `frets` or remove it here");
        return new DotsDefinition(marked, doubles,
            dots.Length("diameter", 2, 10, DotDiameter(strings, marked.LastOrDefault(1)), "of a dot; smaller where the highest marked frets stand close"),
            dots.Length("depth", 0.5, 4, 2, "of its seat"),
            dots.Length("double_spacing", 8, 60, Math.Round(strings.SpreadAt(strings.Basis.Scale / 2), 0) / 2, "between the two of a pair: half the strings' spread at fret 12"));
    }
}
