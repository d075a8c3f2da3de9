using System.Collections.Immutable;
using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A stretch of an edge, wood on its left.</summary>
public sealed record EdgeStretch(ImmutableArray<Point2> Path, bool Closed)
{
    /// <summary>Longest chord between two of its points once it is divided, mm: over a contour's bend a chord of that length stands off by 0.001 mm.</summary>
    private const double Chord = 1;

    /// <summary>How much lower than the planed face counts as carved, mm.</summary>
    private const double Carved = 0.005;

    /// <summary>The same stretch with points at most a millimetre apart.</summary>
    public EdgeStretch Divided()
    {
        var points = ImmutableArray.CreateBuilder<Point2>();
        var chords = Closed ? Path.Length : Path.Length - 1;
        for (var i = 0; i < chords; i++)
        {
            var (a, b) = (Path[i], Path[(i + 1) % Path.Length]);
            var n = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / Chord));
            for (var k = 0; k < n; k++) points.Add(a + (double)k / n * (b - a));
        }
        if (!Closed) points.Add(Path[^1]);
        return new(points.ToImmutable(), Closed);
    }

    /// <summary>The stretches of an edge along which its face is carved lower than it was planed, each longer by a lead at both ends; the whole edge where all of it is.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="face">Its face.</param>
    /// <param name="planed">Height of the planed face.</param>
    /// <param name="width">How far in the edge's form reaches, mm.</param>
    /// <param name="lead">mm.</param>
    public static ImmutableArray<EdgeStretch> WhereCarved(EdgeStretch edge, IHeight face, double planed, double width, double lead)
    {
        ArgumentNullException.ThrowIfNull(edge);
        ArgumentNullException.ThrowIfNull(face);
        var divided = edge.Divided();
        var (points, inward) = (divided.Path, Mitres(divided));
        var reach = (int)Math.Ceiling(lead / Chord);
        bool IsCarved(Point2 p) => planed - face.Z(p.X, p.Y) > Carved;
        bool[] carved = [.. points.Select((p, i) => IsCarved(p) || IsCarved(p + width * inward[i]))];
        bool Near(int i) => Enumerable.Range(i - reach, 2 * reach + 1).Any(k => edge.Closed ? carved[(k % points.Length + points.Length) % points.Length] : k >= 0 && k < points.Length && carved[k]);
        bool[] near = [.. Enumerable.Range(0, points.Length).Select(Near)];
        if (near.All(n => n)) return [divided];
        // A closed edge is begun where it is level, so that no stretch runs over the seam.
        var start = edge.Closed ? Array.IndexOf(near, false) : 0;
        var stretches = ImmutableArray.CreateBuilder<EdgeStretch>();
        var run = new List<Point2>();
        for (var k = 0; k <= points.Length; k++)
        {
            var i = (start + k) % points.Length;
            if (k < points.Length && near[i]) { run.Add(points[i]); continue; }
            if (run.Count > 1) stretches.Add(new([.. run], false));
            run = [];
        }
        return stretches.ToImmutable();
    }

    /// <summary>At each point the way inward that moves both chords by the same distance; no longer than 2.</summary>
    internal static Point2[] Mitres(EdgeStretch stretch)
    {
        var (points, n) = (stretch.Path, stretch.Path.Length);
        var mitres = new Point2[n];
        for (var i = 0; i < n; i++)
        {
            var before = i > 0 || stretch.Closed ? (points[i] - points[(i + n - 1) % n]).Unit : (points[1] - points[0]).Unit;
            var after = i + 1 < n || stretch.Closed ? (points[(i + 1) % n] - points[i]).Unit : before;
            var bisector = (before + after).Unit;
            mitres[i] = 1 / Math.Max(bisector.Dot(after), 0.5) * bisector.Left;
        }
        return mitres;
    }
}
