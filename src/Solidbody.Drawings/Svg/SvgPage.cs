using System.Globalization;

namespace Solidbody.Drawings.Svg;

/// <summary>How large a drawing's coordinates are: its width and height against its viewBox (SVG 1.1, sections 7.2, 7.7, 7.8).</summary>
internal static class SvgPage
{
    /// <summary>Two scales further apart than this do not come from rounding.</summary>
    private const double SameScale = 1e-3;

    /// <summary>From the drawing's coordinates, y down, to mm, y up. The origin stays the coordinates' own: the page's corner says nothing about an instrument.</summary>
    public static Affine Map(SvgElement root, DrawingWish wish, ReadingLog log)
    {
        var (x, y) = Scale(root, wish, log);
        return Affine.Scale(x, -y);
    }

    private static (double X, double Y) Scale(SvgElement root, DrawingWish wish, ReadingLog log)
    {
        var (width, height) = (Size(root, "width"), Size(root, "height"));
        if (width is null && height is null)
            return wish.Unit is { } given ? (given, given)
                : throw log.Stop(root.At, "the drawing does not say how large it is: its <svg> has no width or height in a unit", "width and height in mm, cm, in, pt, pc or px", "give the drawing a page size, or say `unit` in the instrument file: the unit of the drawing's own coordinates");
        if ((width ?? height)!.Value.InPixels) log.Understood(root.At, "the page's size is in pixels, taken as 96 to the inch");
        var scale = OfPage(root, width?.Millimetres, height?.Millimetres, log);
        if (wish.Unit is { } unit && !(Math.Abs(scale.X / unit - 1) <= SameScale && Math.Abs(scale.Y / unit - 1) <= SameScale))
            throw log.Stop(root.At, $"the instrument file says that one unit of the drawing is {Mm(unit)}, the drawing's page that it is {Mm(scale.X)}", "one of the two", "take `unit` out of the instrument file, or correct the drawing's page size");
        return scale;
    }

    private static (double X, double Y) OfPage(SvgElement root, double? width, double? height, ReadingLog log)
    {
        if (root["viewBox"] is not { } text) return (SvgLength.Pixel, SvgLength.Pixel);
        if (ViewBox(text) is not var (w, h) || !(width is null or > 0) || !(height is null or > 0))
            throw log.Stop(root.At, $"viewBox {ReadingLog.Quote(text)} does not fit a page", "four numbers, the last two and the page's size above 0", "correct the <svg> element");
        var (x, y) = ((width ?? height * w / h)!.Value / w, (height ?? width * h / w)!.Value / h);
        var aspect = root["preserveAspectRatio"] ?? "";
        if (aspect.Trim().StartsWith("none", StringComparison.Ordinal)) return (x, y);
        var one = aspect.Contains("slice", StringComparison.Ordinal) ? Math.Max(x, y) : Math.Min(x, y);
        if (Math.Abs(x / y - 1) > SameScale) log.Understood(root.At, $"the page and its viewBox differ in proportion: one unit is taken as {Mm(one)} both ways");
        return (one, one);
    }

    private static (double Millimetres, bool InPixels)? Size(SvgElement root, string attribute) => root[attribute] is { } text ? SvgLength.Read(text) : null;

    private static (double Width, double Height)? ViewBox(string text)
    {
        var scanner = new SvgScanner(text);
        return scanner.Number(out _) && scanner.Number(out _) && scanner.Number(out var w) && scanner.Number(out var h) && scanner.IsAtEnd && w > 0 && h > 0 ? (w, h) : null;
    }

    private static string Mm(double v) => v.ToString("0.####", CultureInfo.InvariantCulture) + " mm";
}
