using Solidbody.Geometry;
using Solidbody.Instrument.Necks;

namespace Solidbody.Instrument.Fretboards;

/// <summary>Where nut, frets, board's ends and scale line lie, on a single scale or a fan: whoever needs one of them asks here. Right-handed plan, mm.</summary>
public sealed record FretLayout
{
    public required Strings Strings { get; init; }
    public required int Frets { get; init; }
    public required NutDefinition Nut { get; init; }
    public required FretboardDefinition Board { get; init; }

    public static FretLayout Of(InstrumentDefinition d)
    {
        ArgumentNullException.ThrowIfNull(d);
        return new() { Strings = Strings.Of(d), Frets = d.Frets, Nut = d.Nut, Board = d.Fretboard };
    }

    public bool IsFanned => Strings.HalfDifference != 0;

    /// <summary>A fret's line, 0 being the nut line, where the strings' speaking length begins; fractions lie between frets.</summary>
    public CrossLine Fret(double fret) => Line(FretTable.Position(1, fret));
    /// <summary>Under the saddles, before any compensation.</summary>
    public CrossLine ScaleLine => Line(1);
    /// <summary>A fret's direction where x is met on the centre line.</summary>
    public CrossLine LineAt(double x) => Line(x / Strings.Scale);
    private CrossLine Line(double ratio) => new(Strings.Scale * ratio, Strings.LineSlope(ratio));

    /// <summary>The nut's face: the board's end toward the head. On the nut line, or behind a zero fret.</summary>
    public CrossLine NutFace => Fret(0).Moved(-Strings.SetBack);
    public CrossLine NutBack => NutFace.Moved(-Nut.Thickness);

    /// <summary>The board's end toward the bridge.</summary>
    public CrossLine BoardEnd
    {
        get
        {
            var last = Fret(Frets);
            if (Board.End == BoardEndKind.AlongLastFret) return last.Moved(Board.BeyondLastFret);
            return new(last.Middle + Math.Abs(last.Slope) * Board.WidthAtEnd / 2 + Board.BeyondLastFret, 0);
        }
    }

    /// <summary>x of the heel's end, square to the centre line: under the board's end, or where the board begins to hang over.</summary>
    public double HeelEnd => BoardEnd.Middle - Math.Abs(BoardEnd.Slope) * Board.WidthAtEnd / 2 - Board.Overhang;

    /// <summary>Half width of board and neck on the nut line's middle.</summary>
    public double NutHalfWidth => Nut.Width / 2;
    /// <summary>Half width gained per mm toward the bridge.</summary>
    public double HalfWidthGain => (Board.WidthAtEnd - Nut.Width) / 2 / BoardEnd.Middle;
    /// <summary>Half width of board and neck at x.</summary>
    public double HalfWidth(double x) => NutHalfWidth + HalfWidthGain * x;

    /// <summary>Where a line meets the board's edge.</summary>
    /// <param name="side">−1 bass, +1 treble.</param>
    public Point2 AtEdge(CrossLine line, int side) => line.At(side * HalfWidth(line.Middle) / (1 - side * HalfWidthGain * line.Slope));

    /// <summary>Where a line is a stated distance inside the board's edge, measured square to the edge.</summary>
    public Point2 InsideEdge(CrossLine line, int side, double distance)
    {
        // d = (h + g x − |y|) / √(1 + g²); along the line inward it grows by this much per mm.
        var perMm = (1 - side * HalfWidthGain * line.Slope) / Math.Sqrt((1 + HalfWidthGain * HalfWidthGain) * (1 + line.Slope * line.Slope));
        return AtEdge(line, side) - side * distance / perMm * line.Along;
    }

    /// <summary>From a point to the board's edge on a side, square to the edge.</summary>
    public double ToEdge(Point2 p, int side) => (HalfWidth(p.X) - side * p.Y) / Math.Sqrt(1 + HalfWidthGain * HalfWidthGain);
}
