using Solidbody.Geometry;

namespace Solidbody.Drawings.Svg;

/// <summary>The basic shapes of SVG 1.1, chapter 9.</summary>
internal static class SvgShapes
{
    /// <returns>False when the element is none of them.</returns>
    public static bool Draw(SvgElement element, Pen pen, ReadingLog log)
    {
        double Length(string attribute) => SvgLength.Of(element, attribute, 0, log);
        switch (element.Name)
        {
            case "rect":
                Rectangle(element, pen, log);
                return true;
            case "circle":
                Ellipse(element, pen, log, Length("r"), Length("r"));
                return true;
            case "ellipse":
                Ellipse(element, pen, log, Length("rx"), Length("ry"));
                return true;
            case "line":
                pen.Start(new(Length("x1"), Length("y1")));
                pen.Line(new(Length("x2"), Length("y2")));
                pen.Lift();
                return true;
            case "polyline" or "polygon":
                Polygon(element, pen, log);
                return true;
            default:
                return false;
        }
    }

    private static void Ellipse(SvgElement element, Pen pen, ReadingLog log, double rx, double ry)
    {
        if (IsNegative(element, log, rx, ry) || rx == 0 || ry == 0) return;
        pen.Ellipse(new(SvgLength.Of(element, "cx", 0, log), SvgLength.Of(element, "cy", 0, log)), new(rx, 0), new(0, ry));
    }

    /// <summary>Section 9.2: a radius not given is the other one; neither is more than half its side.</summary>
    private static void Rectangle(SvgElement element, Pen pen, ReadingLog log)
    {
        double Length(string attribute, double or) => SvgLength.Of(element, attribute, or, log);
        var (x, y, w, h) = (Length("x", 0), Length("y", 0), Length("width", 0), Length("height", 0));
        double? Radius(string attribute) => element[attribute] is null or "auto" ? null : Length(attribute, 0);
        var (givenX, givenY) = (Radius("rx"), Radius("ry"));
        if (IsNegative(element, log, w, h, givenX ?? 0, givenY ?? 0) || w == 0 || h == 0) return;
        var (rx, ry) = (Math.Min(givenX ?? givenY ?? 0, w / 2), Math.Min(givenY ?? givenX ?? 0, h / 2));
        if (rx == 0 || ry == 0)
        {
            pen.Start(new(x, y));
            pen.Line(new(x + w, y));
            pen.Line(new(x + w, y + h));
            pen.Line(new(x, y + h));
            pen.Close();
            return;
        }
        void Corner(Point2 centre, double from, Point2 end) => pen.Arc(centre, new(rx, 0), new(0, ry), from, Math.PI / 2, end);
        pen.Start(new(x + rx, y));
        pen.Line(new(x + w - rx, y));
        Corner(new(x + w - rx, y + ry), -Math.PI / 2, new(x + w, y + ry));
        pen.Line(new(x + w, y + h - ry));
        Corner(new(x + w - rx, y + h - ry), 0, new(x + w - rx, y + h));
        pen.Line(new(x + rx, y + h));
        Corner(new(x + rx, y + h - ry), Math.PI / 2, new(x, y + h - ry));
        pen.Line(new(x, y + ry));
        Corner(new(x + rx, y + ry), Math.PI, new(x + rx, y));
        pen.Close();
    }

    private static void Polygon(SvgElement element, Pen pen, ReadingLog log)
    {
        var scanner = new SvgScanner(element["points"] ?? "");
        var first = true;
        while (!scanner.IsAtEnd)
        {
            if (!scanner.Number(out var x) || !scanner.Number(out var y))
            {
                log.Refuse(element.At, $"points of <{element.Name}> break off at character {scanner.At + 1}", "pairs of numbers", "save the drawing again");
                break;
            }
            if (first) pen.Start(new(x, y)); else pen.Line(new(x, y));
            first = false;
        }
        if (element.Name == "polygon") pen.Close(); else pen.Lift();
    }

    private static bool IsNegative(SvgElement element, ReadingLog log, params ReadOnlySpan<double> sizes)
    {
        foreach (var size in sizes)
        {
            if (size >= 0) continue;
            log.Refuse(element.At, $"a size of <{element.Name}> is below 0", "0 or more", "correct the shape");
            return true;
        }
        return false;
    }
}
