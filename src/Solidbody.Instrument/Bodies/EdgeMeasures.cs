using Solidbody.Geometry;
using Solidbody.Instrument.Outlines;

namespace Solidbody.Instrument.Bodies;

/// <summary>What is measured of the body's shaped edges: how much is off the face half their width inside the outline, as near to the tail as the face is level and closed.</summary>
internal static class EdgeMeasures
{
    /// <summary>Level, closed wood beyond the edge on which a gauge stands, mm.</summary>
    private const double Foot = 3;

    /// <param name="body">Outline, faces, rooms and edges.</param>
    public static IEnumerable<Measure> Of(Part body)
    {
        foreach (var edge in body.Edges)
            if (Place(body, edge) is { } at)
            {
                var taken = edge.Form.TakenAt(new PathDistance(edge.Path, edge.Closed, edge.Form.Width).From(at));
                var planed = edge.From == Side.Front ? body.Bounds.Z1 : body.Bounds.Z0;
                yield return new($"{edge.Name}, depth {Math.Round(edge.Form.Width / 2, 1)} mm inside the outline at the tail", taken, Take.Tolerance,
                    edge.From == Side.Front ? new Caliper.DepthFromTop(at, planed) : new Caliper.DepthFromBottom(at, planed));
            }
    }

    private static Point2? Place(Part body, ShapedEdge edge)
    {
        var (n, path, half) = (edge.Path.Length, edge.Path, edge.Form.Width / 2);
        var face = edge.From == Side.Front ? body.Front : body.Back;
        var planed = edge.From == Side.Front ? body.Bounds.Z1 : body.Bounds.Z0;
        bool IsPlain(Point2 p) => Math.Abs(face.Z(p.X, p.Y) - planed) < Tolerances.Geometry && !body.Pockets.Any(r => r.From == edge.From && r.Region.SignedDistance(p, Foot) < Foot);
        foreach (var i in Enumerable.Range(0, n).OrderByDescending(i => path[i].X))
        {
            var inward = (path[(i + 1) % n] - path[(i + n - 1) % n]).Unit.Left;
            var at = path[i] + half * inward;
            if (Math.Abs(body.Outline.SignedDistance(at, 2 * half) + half) < Tolerances.Flattening && IsPlain(path[i]) && IsPlain(at) && IsPlain(path[i] + (2 * half + Foot) * inward)) return at;
        }
        return null;
    }
}
