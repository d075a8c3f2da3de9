using Solidbody.Geometry;

namespace Solidbody.Drawings.Svg;

/// <summary>The list of a <c>transform</c> attribute; the last one meets the shape first (SVG 1.1, section 7.6).</summary>
internal static class SvgTransform
{
    private const int MostNumbers = 6;

    public static Affine Of(SvgElement element, ReadingLog log)
    {
        if (SvgLook.Styled(element, "transform") is not (null or "none"))
            log.Refuse(element.At, $"<{element.Name}> is moved by its style", "a transform attribute", "write the transform as an attribute, or draw the shape where it is");
        if (element["transform"] is not { } text) return Affine.Identity;
        if (Read(text) is { } map) return map;
        log.Refuse(element.At, $"transform of <{element.Name}> is {ReadingLog.Quote(text)}", "matrix(6 numbers), translate(1 or 2), scale(1 or 2), rotate(1 or 3), skewX(1) and skewY(1), none of which may flatten the drawing", "correct it, or draw the shape where it is");
        return Affine.Identity;
    }

    private static Affine? Read(string text)
    {
        var scanner = new SvgScanner(text);
        var map = Affine.Identity;
        Span<double> n = stackalloc double[MostNumbers];
        while (!scanner.IsAtEnd)
        {
            var name = scanner.Function();
            var count = 0;
            while (!scanner.Bracket())
                if (count == MostNumbers || !scanner.Number(out n[count++])) return null;
            if (One(name, n[..count]) is not { } next) return null;
            map = map.After(next);
        }
        // A flattened drawing has no area, and what is not finite no place.
        return Math.Abs(map.A * map.D - map.B * map.C) is > Tolerances.Geometry and < double.PositiveInfinity ? map : null;
    }

    private static Affine? One(string name, ReadOnlySpan<double> n) => (name, n.Length) switch
    {
        ("matrix", 6) => new(n[0], n[1], n[2], n[3], n[4], n[5]),
        ("translate", 1) => Affine.Shift(new(n[0], 0)),
        ("translate", 2) => Affine.Shift(new(n[0], n[1])),
        ("scale", 1) => Affine.Scale(n[0], n[0]),
        ("scale", 2) => Affine.Scale(n[0], n[1]),
        ("rotate", 1) => Affine.Turn(double.DegreesToRadians(n[0])),
        ("rotate", 3) => Affine.Shift(new(n[1], n[2])).After(Affine.Turn(double.DegreesToRadians(n[0]))).After(Affine.Shift(new(-n[1], -n[2]))),
        ("skewX", 1) => new(1, 0, Math.Tan(double.DegreesToRadians(n[0])), 1, 0, 0),
        ("skewY", 1) => new(1, Math.Tan(double.DegreesToRadians(n[0])), 0, 1, 0, 0),
        _ => null,
    };
}
