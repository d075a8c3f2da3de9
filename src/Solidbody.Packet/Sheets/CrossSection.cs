using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>A cut across the blank as it lies in this set-up: blank, finished part hatched, spoilboard, Z0, thickness.</summary>
internal sealed class CrossSection
{
    private const double SpoilboardShown = 3.2;   // paper mm
    private const double TitleRoom = 7;
    private const double DimensionRoom = 7;
    private const double WidestOnPaper = 70;
    private const int Samples = 600;

    private readonly SetUp setUp;
    private readonly PartShape shape;

    public CrossSection(SetUp setUp, Part part)
    {
        this.setUp = setUp;
        shape = new PartShape(part);
        X = TellingPlace(part, setUp.Placement.Up);
        var blank = setUp.Blank;
        Scale = SheetFormat.ScaleFor(blank.Width, blank.Thickness, WidestOnPaper, 30);
        Width = Math.Max(SheetFormat.Room.X1 - SheetFormat.TitleBlock.X0, blank.Width / Scale + DimensionRoom + 4);
        Height = TitleRoom + blank.Thickness / Scale + SpoilboardShown + 1.5;
    }

    public int Scale { get; }
    public double Width { get; }
    public double Height { get; }
    /// <summary>Where it is cut, part frame.</summary>
    public double X { get; }

    /// <summary>Through the largest room opened from the face that lies up, else from the other; a quarter of the way along where there is none.</summary>
    private static double TellingPlace(Part part, Side up)
    {
        var opened = part.Pockets.Where(p => p.From == up).MaxBy(p => p.Region.Area) ?? part.Pockets.MaxBy(p => p.Region.Area);
        var x = opened is null ? part.Bounds.X0 + part.Bounds.Length / 4 : opened.Region.Bounds.Centre.X;
        return Math.Clamp(x, part.Bounds.X0 + 0.05 * part.Bounds.Length, part.Bounds.X1 - 0.05 * part.Bounds.Length);
    }

    /// <param name="at">Upper left corner, paper mm.</param>
    public void Draw(Paper paper, Point2 at)
    {
        var blank = setUp.Blank;
        paper.Text(at + new Point2(0, Lettering.DrawingHeavy.CapHeight), $"Across the blank, {Figures.Whole(X)} from the nut, 1:{Scale}", Lettering.DrawingHeavy);
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
        var words = Figures.Millimetres(thickness);
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

    /// <summary>The part's wood along the cut as closed lines on paper, one for each stretch without a gap.</summary>
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
            var column = shape.At(new(X, LaidY(laidY)));
            if (column.IsEmpty) { Close(); continue; }
            var (a, b) = (WorkZ(column.Bottom), WorkZ(column.Top));
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
