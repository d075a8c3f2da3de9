using System.Collections.Immutable;

namespace Solidbody.Drawings.Svg;

/// <summary>Lengths with their units.</summary>
internal static class SvgLength
{
    /// <summary>mm in a CSS pixel: 96 to the inch. Source: CSS Values and Units 3, section 6.2, absolute lengths, from memory.</summary>
    public const double Pixel = Geometry.Length.MillimetresPerInch / 96;

    /// <summary>mm in one of each unit; a bare number is a pixel (SVG 1.1, section 7.10).</summary>
    private static readonly ImmutableArray<(string Word, double Millimetres)> Units =
    [
        ("", Pixel), ("px", Pixel), ("mm", 1), ("cm", 10), ("in", Geometry.Length.MillimetresPerInch), ("pt", Geometry.Length.MillimetresPerInch / 72), ("pc", Geometry.Length.MillimetresPerInch / 6),
    ];

    /// <summary>A length in mm, and whether it is in pixels; null when it hangs on what is around it (<c>%</c>, <c>em</c>) or is none.</summary>
    public static (double Millimetres, bool InPixels)? Read(string text)
    {
        var scanner = new SvgScanner(text);
        if (!scanner.Number(out var value)) return null;
        var word = scanner.Rest.ToString();
        foreach (var (unit, millimetres) in Units)
            if (unit == word) return (value * millimetres, unit is "" or "px");
        return null;
    }

    /// <summary>A length attribute of a shape, in the drawing's own coordinates; the default when it is not there.</summary>
    public static double Of(SvgElement element, string attribute, double or, ReadingLog log)
    {
        if (element[attribute] is not { } text) return or;
        if (Read(text) is var (millimetres, _)) return millimetres / Pixel;
        log.Refuse(element.At, $"{attribute} of <{element.Name}> is {ReadingLog.Quote(text)}", "a number, or one with px, mm, cm, in, pt or pc", "give the measure itself");
        return or;
    }
}
