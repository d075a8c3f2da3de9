using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>A cut across the blank as this set-up leaves it: the wood hatched, the blank round it, spoilboard, thickness.
/// What the other face still lacks is not yet cut; once both faces are done, the finished part stands in its blank.</summary>
internal sealed class CrossSection
{
    private const double SpoilboardShown = 3.2;   // paper mm
    private const double TitleRoom = 7;
    private const double DimensionRoom = 7;
    private const double WidestOnPaper = 76;
    private const int Samples = 600;
    private const double RoomShare = 0.9;

    private readonly SetUp setUp;
    private readonly PartShape shape;
    private readonly bool freed;   // the outline is cut: what is round the part is waste

    public CrossSection(SheetInput input)
    {
        setUp = input.SetUp;
        ImmutableArray<Side> cut = [.. input.FacesCut, setUp.Placement.Up];
        freed = input.IsLastOfBlank;
        shape = new PartShape(freed ? input.Part : Half(input.Part, cut, setUp.Blank));
        X = TellingPlace(input.Part, setUp.Placement.Up);
        var blank = setUp.Blank;
        Scale = SheetFormat.ScaleFor(blank.Width, blank.Thickness, WidestOnPaper, 30);
        Width = Math.Max(SheetFormat.Room.X1 - SheetFormat.TitleBlock.X0, blank.Width / Scale + DimensionRoom + 4);
        Height = TitleRoom + blank.Thickness / Scale + SpoilboardShown + 1.5;
    }

    /// <summary>The part with only what was cut from the given faces; where no face was cut, the blank's own.</summary>
    private static Part Half(Part part, ImmutableArray<Side> cut, Box3 blank) => part with
    {
        Front = cut.Contains(Side.Front) ? part.Front : new LevelHeight(blank.Z1),
        Back = cut.Contains(Side.Back) ? part.Back : new LevelHeight(blank.Z0),
        Pockets = [.. part.Pockets.Where(p => cut.Contains(p.From))],
        Holes = [.. part.Holes.Where(h => cut.Contains(h.From))],
        Flats = [.. part.Flats.Where(f => cut.Contains(f.From))],
        Slots = cut.Contains(Side.Front) ? part.Slots : [],
        Ledges = [.. part.Ledges.Where(l => cut.Contains(l.From))],
        Edges = [.. part.Edges.Where(e => cut.Contains(e.From))],
    };

    public int Scale { get; }
    public double Width { get; }
    public double Height { get; }
    /// <summary>Where it is cut, part frame.</summary>
    public double X { get; }

    /// <summary>Through the largest room opened from the face that lies up, else from the other; a quarter of the way along where there is none.
    /// What takes the part's whole width is a step in its face, no room.</summary>
    private static double TellingPlace(Part part, Side up)
    {
        var rooms = part.Pockets.Where(p => p.Region.Bounds.Height < RoomShare * part.Bounds.Width).ToList();
        var opened = rooms.Where(p => p.From == up).MaxBy(p => p.Region.Area) ?? rooms.MaxBy(p => p.Region.Area);
        var x = opened is null ? part.Bounds.X0 + part.Bounds.Length / 4 : opened.Region.Bounds.Centre.X;
        return Math.Clamp(x, part.Bounds.X0 + 0.05 * part.Bounds.Length, part.Bounds.X1 - 0.05 * part.Bounds.Length);
    }

    /// <param name="at">Upper left corner, paper mm.</param>
    public void Draw(Paper paper, Point2 at)
    {
        var blank = setUp.Blank;
        paper.Text(at + new Point2(0, Lettering.DrawingHeavy.CapHeight), Caption, Lettering.DrawingHeavy);
        var left = at.X + 2;
        var (low, high) = (WorkZ(blank.Z0), WorkZ(blank.Z1));
        var (bottom, top) = (Math.Min(low, high), Math.Max(low, high));
        var foot = at.Y + TitleRoom + (top - bottom) / Scale;     // the blank's lower face on paper
        var (y0, y1) = (Math.Min(LaidY(blank.Y0), LaidY(blank.Y1)), Math.Max(LaidY(blank.Y0), LaidY(blank.Y1)));
        Point2 OnPaper(double laidY, double workZ) => new(left + (laidY - y0) / Scale, foot - (workZ - bottom) / Scale);

        var right = OnPaper(y1, bottom).X;
        var board = new Box2(left - 2, foot + bottom / Scale, right + 2, foot + bottom / Scale + SpoilboardShown);
        paper.Hatch([[new(board.X0, board.Y0), new(board.X1, board.Y0), new(board.X1, board.Y1), new(board.X0, board.Y1)]], 4, Stroke.Fine);
        paper.Rectangle(board, Stroke.Thin);
        paper.Rectangle(new(left, OnPaper(y0, top).Y, right, foot), Stroke.Outline, white: true);
        var runs = Runs(y0, y1, OnPaper);
        paper.Hatch(runs, 1.1, Stroke.Fine);
        foreach (var run in runs) paper.Polygon(run, Stroke.Frame);
        if (y0 < 0 && y1 > 0) paper.Line(OnPaper(0, top) - new Point2(0, 2.2), OnPaper(0, bottom) + new Point2(0, SpoilboardShown + 1), Stroke.Centre);
        Thickness(paper, right, OnPaper(y0, top).Y, foot, top - bottom);
    }

    private static void Thickness(Paper paper, double right, double top, double foot, double thickness)
    {
        var x = right + 4;
        paper.Line(new(right, top), new(x + 1.2, top), Stroke.Fine);
        paper.Line(new(x, top), new(x, foot), Stroke.Fine);
        var words = Written.Millimetres(thickness);
        var length = foot - top;
        if (length > 6)
        {
            paper.Arrow(new(x, top), new(0, -1));
            paper.Arrow(new(x, foot), new(0, 1));
        }
        else
        {
            paper.Line(new(x, top - 4.5), new(x, top), Stroke.Fine);
            paper.Arrow(new(x, top), new(0, 1));
            paper.Arrow(new(x, foot), new(0, -1));
        }
        paper.Text(new(x + 3.8, (top + foot) / 2), words, Lettering.Drawing, Align.Middle, turn: 1);
    }

    private string Caption => $"{(freed ? "Finished part" : "After this set-up")}, {Written.Whole(Math.Abs(X))} {(X < 0 ? "before" : "from")} the nut, 1:{Scale}";

    /// <summary>The wood along the cut as closed lines on paper, one for each stretch without a gap.</summary>
    private List<Point2[]> Runs(double y0, double y1, Func<double, double, Point2> onPaper)
    {
        var runs = new List<Point2[]>();
        List<Point2> tops = [], bottoms = [];
        void Close()
        {
            if (tops.Count > 1) runs.Add([.. tops, .. Enumerable.Reverse(bottoms)]);
            tops = [];
            bottoms = [];
        }
        for (var i = 0; i <= Samples; i++)
        {
            var laidY = y0 + (y1 - y0) * i / Samples;
            var p = new Point2(X, LaidY(laidY));
            var column = shape.At(p);
            var waste = !freed && !shape.Part.Outline.Contains(p);
            if (column.IsEmpty && !waste) { Close(); continue; }
            var (a, b) = waste ? (WorkZ(setUp.Blank.Z0), WorkZ(setUp.Blank.Z1)) : (WorkZ(column.Bottom), WorkZ(column.Top));
            bottoms.Add(onPaper(laidY, Math.Min(a, b)));
            tops.Add(onPaper(laidY, Math.Max(a, b)));
        }
        Close();
        return runs;
    }

    private double WorkZ(double partZ) => setUp.Placement.ToWork(new(0, 0, partZ)).Z;

    /// <summary>Turning over changes the sign of y; the same rule leads back.</summary>
    private double LaidY(double y) => setUp.Placement.Up == Side.Front ? y : -y;
}
