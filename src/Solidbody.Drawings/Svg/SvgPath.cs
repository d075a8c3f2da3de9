using Solidbody.Geometry;

namespace Solidbody.Drawings.Svg;

/// <summary>Path data, SVG 1.1 section 8.3: every command, absolute and relative, repeated without its letter too.</summary>
internal ref struct SvgPath
{
    private SvgScanner scanner;
    private readonly Pen pen;
    /// <summary>Where the pen is, where its stroke began, and the last curve's inner control, which a smooth curve mirrors.</summary>
    private Point2 at, start;
    private Point2? cubic, quadratic;
    private bool down;

    private SvgPath(string data, Pen pen)
    {
        scanner = new(data);
        this.pen = pen;
    }

    public static void Draw(SvgElement element, Pen pen, ReadingLog log)
    {
        var path = new SvgPath(element["d"] ?? "", pen);
        if (!path.DrawAll())
            log.Refuse(element.At, $"the path breaks off at character {path.scanner.At + 1} of its d: {ReadingLog.Quote(path.scanner.Rest)}", "M, L, H, V, C, S, Q, T, A and Z, each with its numbers, M first", "save the drawing again");
        pen.Lift();
    }

    private bool DrawAll()
    {
        var command = '\0';
        while (!scanner.IsAtEnd)
        {
            var letter = scanner.Letter();
            // Without a letter the last command goes on; after a move, lines do.
            if (letter == '\0') letter = command switch { 'M' => 'L', 'm' => 'l', 'Z' or 'z' => '\0', _ => command };
            if (command == '\0' && letter is not ('M' or 'm')) return false;
            command = letter;
            if (!One(char.ToUpperInvariant(command), char.IsAsciiLetterLower(command))) return false;
        }
        return true;
    }

    private bool One(char command, bool isRelative)
    {
        var origin = isRelative ? at : default;
        var (lastCubic, lastQuadratic) = (cubic, quadratic);
        (cubic, quadratic) = (null, null);
        Point2 to, c1, c2;
        switch (command)
        {
            case 'M':
                if (!Pair(origin, out to)) return false;
                pen.Lift();
                (at, start, down) = (to, to, false);
                return true;
            case 'Z':
                if (down) pen.Close();
                (at, down) = (start, false);
                return true;
            case 'L':
                return Pair(origin, out to) && LineTo(to);
            case 'H':
                return scanner.Number(out var x) && LineTo(new(origin.X + x, at.Y));
            case 'V':
                return scanner.Number(out var y) && LineTo(new(at.X, origin.Y + y));
            case 'C':
                return Pair(origin, out c1) && Pair(origin, out c2) && Pair(origin, out to) && CubicTo(c1, c2, to);
            case 'S':
                c1 = lastCubic is { } before ? 2 * at - before : at;
                return Pair(origin, out c2) && Pair(origin, out to) && CubicTo(c1, c2, to);
            case 'Q':
                return Pair(origin, out c1) && Pair(origin, out to) && QuadraticTo(c1, to);
            case 'T':
                c1 = lastQuadratic is { } mirrored ? 2 * at - mirrored : at;
                return Pair(origin, out to) && QuadraticTo(c1, to);
            case 'A':
                return scanner.Number(out var rx) && scanner.Number(out var ry) && scanner.Number(out var turn) && scanner.Flag(out var large) && scanner.Flag(out var sweep) && Pair(origin, out to)
                    && ArcTo(rx, ry, double.DegreesToRadians(turn), large, sweep, to);
            default:
                return false;
        }
    }

    private bool Pair(Point2 origin, out Point2 p)
    {
        var good = scanner.Number(out var x);
        good &= scanner.Number(out var y);
        p = origin + new Point2(x, y);
        return good;
    }

    private void Down()
    {
        if (!down) pen.Start(at);
        down = true;
    }

    private bool LineTo(Point2 to)
    {
        Down();
        pen.Line(to);
        at = to;
        return true;
    }

    private bool CubicTo(Point2 c1, Point2 c2, Point2 to)
    {
        Down();
        pen.Bezier(c1, c2, to);
        (at, cubic) = (to, c2);
        return true;
    }

    private bool QuadraticTo(Point2 c, Point2 to)
    {
        Down();
        pen.Bezier(c, to);
        (at, quadratic) = (to, c);
        return true;
    }

    private bool ArcTo(double rx, double ry, double turn, bool large, bool sweep, Point2 to)
    {
        Down();
        if (SvgArc.Of(at, Math.Abs(rx), Math.Abs(ry), turn, large, sweep, to) is var (centre, u, v, from, swept)) pen.Arc(centre, u, v, from, swept, to);
        else pen.Line(to);
        at = to;
        return true;
    }
}
