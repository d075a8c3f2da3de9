using Solidbody.Geometry;
using Solidbody.Packet.Drawing;
using Solidbody.Programs;

namespace Solidbody.Packet.Sheets;

/// <summary>What lies where on the bed, seen from above, to a standard scale: travel, blank, part, keep-outs, dowels, work zero, and where the person stands.</summary>
internal sealed class BedDrawing
{
    private const double AxisRoom = 8;
    private const double AxesBelow = 6;
    private const double LineOfLabel = 4.2;
    /// <summary>Beside a bed that leaves so much room labels may stand off it.</summary>
    private const double LabelMargin = 46;
    private const double DowelCross = 4;
    private const double DowelMark = 1.3;   // a symbol, at least so large

    private readonly SetUp setUp;
    private readonly Instrument.Part part;
    private readonly Box2 shown;
    private readonly Point2 corner;
    private readonly List<Label> labels = [];

    private sealed record Label(string[] Lines, Point2 Anchor, double Radius = 0.5, bool Heavy = false);

    public BedDrawing(SheetInput input, Box2 room)
    {
        setUp = input.SetUp;
        part = input.Part;
        shown = Hull(setUp.Bed, setUp.Travel.Plan);
        Scale = SheetFormat.ScaleFor(shown.Width, shown.Height, room.Width - AxisRoom, room.Height - AxisRoom);
        corner = new(room.X0 + AxisRoom, room.Y0);
        Box = new(corner.X, corner.Y, corner.X + shown.Width / Scale, corner.Y + shown.Height / Scale);
        Bottom = Box.Y1 + AxesBelow;
        var free = SheetFormat.Room.X1 - Box.X1 - 2 * SheetFormat.Gap - SheetFormat.SideNotes;
        Labelled = Box with { X1 = free > LabelMargin / 2 ? Box.X1 + Math.Min(free, LabelMargin) : Box.X1 };
    }

    /// <summary>One to so many.</summary>
    public int Scale { get; }
    /// <summary>The bed on the paper.</summary>
    public Box2 Box { get; }
    /// <summary>Bed and labels on the paper.</summary>
    public Box2 Labelled { get; }
    /// <summary>Where the drawing ends.</summary>
    public double Bottom { get; }

    /// <summary>Draws it.</summary>
    /// <returns>Labels that found no room; they belong in the notes.</returns>
    public List<string> Draw(Paper paper)
    {
        var placer = new LabelPlacer(Labelled.Grown(-1.5));
        Bed(paper, placer);
        Blank(paper, placer);
        Part(paper, placer);
        KeepOuts(paper, placer);
        Dowels(paper, placer);
        WorkZero(paper, placer);
        Axes(paper);
        return Labels(paper, placer);
    }

    private Point2 OnPaper(Point2 work) => new(corner.X + (work.X - shown.X0) / Scale, Box.Y1 - (work.Y - shown.Y0) / Scale);
    private Point2 OnPaper(double partX, double partY) => OnPaper(setUp.Placement.ToWork(new(partX, partY, 0)).Plan);
    private Point2[] OnPaper(IEnumerable<Point2> partPoints) => [.. partPoints.Select(p => OnPaper(p.X, p.Y))];

    private void Bed(Paper paper, LabelPlacer placer)
    {
        paper.Rectangle(Box, Stroke.Outline);
        placer.Ink(Corners(Box));
        var travel = setUp.Travel.Plan;
        var onPaper = Box2.Around([OnPaper(new Point2(travel.X0, travel.Y0)), OnPaper(new Point2(travel.X1, travel.Y1))]);
        paper.Rectangle(onPaper, Stroke.Hidden);
        placer.Ink(Corners(onPaper));
        var text = $"travel {Written.Size(travel.Width)} × {Written.Size(travel.Height)}";
        var at = new Point2(onPaper.X0 + 1.8, onPaper.Y0 + 1.8 + Lettering.Drawing.CapHeight);
        paper.Text(at, text, Lettering.Drawing);
        placer.Block(new(at.X, onPaper.Y0 + 1, at.X + paper.Width(text, Lettering.Drawing), at.Y + 1));
    }

    private void Blank(Paper paper, LabelPlacer placer)
    {
        var blank = setUp.Blank;
        var corners = OnPaper(Corners(blank.Plan));
        paper.Polygon(corners, Stroke.Outline, white: true);
        placer.Ink(corners);
        placer.Wood(new Region(new Loop([.. corners])));
        var overhang = 4.0 * Scale;
        var (a, b) = (OnPaper(blank.X0 - overhang, 0), OnPaper(blank.X1 + overhang, 0));
        if (0 > blank.Y0 && 0 < blank.Y1)
        {
            paper.Line(a, b, Stroke.Centre);
            placer.Ink(a, b);
        }
        var size = $"blank {Written.Whole(blank.Length)} × {Written.Whole(blank.Width)} × {Written.Size(blank.Thickness)}";
        labels.Add(new([size, $"{FaceUp} up, {Laid}", .. Spare()], OnPaper(blank.X0 + 0.62 * blank.Length, setUp.Placement.Up == Side.Front ? blank.Y0 : blank.Y1)));
        labels.Insert(0, new([$"{PartEnd} end"], OnPaper(blank.X0, 0.55 * (setUp.Placement.Up == Side.Front ? blank.Y1 : blank.Y0)), Heavy: true));
        Corner();
    }

    private string FaceUp => setUp.Placement.Up == Side.Front ? "front" : "back";

    private string PartEnd => part.Name switch { "neck" => "headstock", "fretboard" => "nut", _ => "neck" };

    private string Laid
    {
        get
        {
            var (sine, cosine) = Math.SinCos(setUp.Placement.Turn);
            return Math.Abs(sine) < 1e-9 ? "laid along X" : Math.Abs(cosine) < 1e-9 ? "laid along Y" : $"laid at {Written.Degrees(Folded(setUp.Placement.Turn))} to X";
        }
    }

    /// <summary>Where the blank's corner nearest to the person lies, the left one of two.</summary>
    private void Corner()
    {
        var nearest = Corners(setUp.Blank.Plan).Select(c => setUp.Placement.ToWork(new(c.X, c.Y, 0)).Plan).OrderBy(w => Math.Round(w.Y, 3)).ThenBy(w => w.X).First();
        var from = FromBed(nearest);
        labels.Insert(0, new([$"blank’s corner, {from.Left},", from.Near], OnPaper(nearest)));
    }

    /// <summary>A place as a tape finds it: from the bed's left edge and from the edge at the person.</summary>
    private (string Left, string Near) FromBed(Point2 work) => ($"{Written.Whole(work.X - setUp.Bed.X0)} from left", $"{Written.Whole(work.Y - setUp.Bed.Y0)} from near edge");

    /// <summary>An angle of a line, which has no direction: −90° to 90°.</summary>
    private static double Folded(double turn) => turn - Math.PI * Math.Round(turn / Math.PI);

    /// <summary>How far the blank's corners stay inside the travel.</summary>
    private string[] Spare()
    {
        var travel = setUp.Travel;
        var least = Corners(setUp.Blank.Plan).Select(c => setUp.Placement.ToWork(new(c.X, c.Y, 0)))
            .Min(w => Math.Min(Math.Min(w.X - travel.X0, travel.X1 - w.X), Math.Min(w.Y - travel.Y0, travel.Y1 - w.Y)));
        return least >= 0 ? [$"{Written.Millimetres(least)} to spare in the travel"] : [];
    }

    private void Part(Paper paper, LabelPlacer placer)
    {
        foreach (var line in PartLines.Seen(part, setUp.Placement.Up))
        {
            var points = OnPaper(line.Loop.Points);
            paper.Polygon(points, line.Role switch { LineRole.Outline => Stroke.Outline, LineRole.Feature => Stroke.Thin, _ => Stroke.Fine });
            placer.Ink(points);
        }
        foreach (var tab in setUp.Tabs) TabMark(paper, tab);
    }

    /// <summary>A tab is a black bar across the outline, as long as the tab.</summary>
    private void TabMark(Paper paper, Tab tab)
    {
        var loop = part.Outline.Loops[0].Points;
        var nearest = Enumerable.Range(0, loop.Length).MinBy(i => (0.5 * (loop[i] + loop[(i + 1) % loop.Length])).DistanceTo(tab.At));
        var along = (loop[(nearest + 1) % loop.Length] - loop[nearest]).Unit;
        var half = Math.Max(tab.Length, 4) / 2;
        var depth = 1.0 * Scale;
        paper.Polygon(OnPaper([tab.At - half * along - depth / 2 * along.Left, tab.At + half * along - depth / 2 * along.Left, tab.At + half * along + depth / 2 * along.Left, tab.At - half * along + depth / 2 * along.Left]), null, black: true);
    }

    private void KeepOuts(Paper paper, LabelPlacer placer)
    {
        foreach (var keepOut in setUp.KeepOuts)
        {
            var box = Box2.Around([OnPaper(new Point2(keepOut.Box.X0, keepOut.Box.Y0)), OnPaper(new Point2(keepOut.Box.X1, keepOut.Box.Y1))]);
            paper.Rectangle(box, Stroke.Thin, white: true);
            paper.Hatch([Corners(box)], 0.9, Stroke.Fine);
            placer.Block(box);
        }
        if (setUp.KeepOuts.IsEmpty) return;
        var nearest = setUp.KeepOuts.MaxBy(k => k.Box.Plan.Centre.X - k.Box.Plan.Centre.Y)!;
        var words = setUp.KeepOuts.Length == 1 ? $"keep clear: {nearest.Name}" : $"hatched: keep clear, {setUp.KeepOuts.Length} places";
        labels.Add(new([words], OnPaper(nearest.Box.Plan.Centre), nearest.Box.Plan.Width / 2 / Scale + 0.6));
    }

    private void Dowels(Paper paper, LabelPlacer placer)
    {
        foreach (var hole in setUp.Registration)
        {
            var centre = OnPaper(hole.Centre.X, hole.Centre.Y);
            var radius = Math.Max(hole.Diameter / 2 / Scale, DowelMark);
            paper.Circle(centre, radius, Stroke.Frame);
            placer.Block(new Box2(centre.X, centre.Y, centre.X, centre.Y).Grown(radius + 0.4));
            var fromZero = setUp.Placement.ToWork(new(hole.Centre.X, hole.Centre.Y, 0)).Plan.Length;
            if (fromZero > 0.01)
                labels.Add(new([$"{hole.Name} ⌀{Written.Size(hole.Diameter)}", $"{Written.Millimetres(fromZero)} from work zero"], centre, radius + 0.8));
        }
    }

    private void WorkZero(Paper paper, LabelPlacer placer)
    {
        var zero = OnPaper(new Point2(0, 0));
        paper.Line(zero - new Point2(DowelCross, 0), zero + new Point2(DowelCross, 0), Stroke.Frame);
        paper.Line(zero - new Point2(0, DowelCross), zero + new Point2(0, DowelCross), Stroke.Frame);
        placer.Block(new Box2(zero.X, zero.Y, zero.X, zero.Y).Grown(DowelCross / 2));
        var dowel = setUp.Registration.FirstOrDefault(r => setUp.Placement.ToWork(new(r.Centre.X, r.Centre.Y, 0)).Plan.Length <= 0.01);
        var from = FromBed(new(0, 0));
        string[] lines = ["work zero X0 Y0", dowel is null ? "cross on the centre line" : $"{dowel.Name} ⌀{Written.Size(dowel.Diameter)}", $"{from.Left}, {from.Near}"];
        labels.Insert(1, new(lines, zero, DowelCross / 2 + 1, Heavy: true));
    }

    /// <summary>X and Y as the machine moves, and where the person stands.</summary>
    private void Axes(Paper paper)
    {
        var origin = new Point2(Box.X0 - 4.5, Box.Y1 + 3.2);
        var (x, y) = (origin + new Point2(16, 0), origin - new Point2(0, 20));
        paper.Line(origin, x, Stroke.Fine);
        paper.Line(origin, y, Stroke.Fine);
        paper.Arrow(x, new(1, 0));
        paper.Arrow(y, new(0, -1));
        paper.Text(x + new Point2(1.5, 1.1), "X", Lettering.Drawing);
        paper.Text(y - new Point2(0, 1.2), "Y", Lettering.Drawing, Align.Middle);
        const string stand = "front of the machine, you stand here";
        var right = Math.Max(Box.X1, x.X + 6 + paper.Width(stand, Lettering.Drawing));
        paper.Text(new(right, Box.Y1 + 4.3), stand, Lettering.Drawing, Align.Right);
    }

    private List<string> Labels(Paper paper, LabelPlacer placer)
    {
        var dropped = new List<string>();
        foreach (var label in labels)
        {
            Lettering Of(int line) => label.Heavy && line == 0 ? Lettering.DrawingHeavy : Lettering.Drawing;
            var width = label.Lines.Select((l, i) => paper.Width(l, Of(i))).Max();
            var height = (label.Lines.Length - 1) * LineOfLabel + Lettering.Drawing.Size;
            if (placer.Place(label.Anchor, width, height, label.Radius) is not { } placed) { dropped.Add(string.Join(", ", label.Lines)); continue; }
            paper.Line(placed.LeaderFrom, placed.LeaderTo, Stroke.Fine);
            paper.Rectangle(placed.Box, null, white: true);
            for (var i = 0; i < label.Lines.Length; i++)
                paper.Text(new(placed.Box.X0, placed.Box.Y0 + 2.5 + LineOfLabel * i), label.Lines[i], Of(i));
        }
        return dropped;
    }

    private static Box2 Hull(Box2 a, Box2 b) => new(Math.Min(a.X0, b.X0), Math.Min(a.Y0, b.Y0), Math.Max(a.X1, b.X1), Math.Max(a.Y1, b.Y1));
    private static Point2[] Corners(Box2 b) => [new(b.X0, b.Y0), new(b.X1, b.Y0), new(b.X1, b.Y1), new(b.X0, b.Y1)];
}
