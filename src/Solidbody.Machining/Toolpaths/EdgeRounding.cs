using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Rounds an edge with a roundover cutter, or with a ball-end in passes round it. Climb: wood on the cutter's right, so the path is run backwards.</summary>
public static class EdgeRounding
{
    /// <summary>Ridge between the passes of a ball that is sanded away, mm; common practice, no source.</summary>
    private const double SandedRidge = 0.02;

    /// <summary>Rounds the edge of a face.</summary>
    /// <param name="s">A roundover of the edge's radius, or a ball-end.</param>
    /// <param name="path">The edge, counter-clockwise, wood on its left. Open paths run on past the edge at both ends.</param>
    /// <param name="closed">Whether the last point joins the first.</param>
    /// <param name="radius">Radius r of the rounded edge, mm.</param>
    /// <param name="face">Height of the face.</param>
    /// <remarks>Roundover: axis outside of the path by the tip's radius, tip at face − r, in steps from above.
    /// Ball of radius R touching where the edge leans by φ (0 on the face, π/2 on the side): contact r − r sin φ inside of the path and r − r cos φ below the face,
    /// centre R further along the normal (sin φ outward, cos φ up). A ball reaches R + r below the face beside the edge: the waste there is already gone.</remarks>
    /// <exception cref="ArgumentException">Another kind of cutter, or a roundover of another radius.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, ImmutableArray<Point2> path, bool closed, double radius, double face)
    {
        ArgumentNullException.ThrowIfNull(s);
        var passes = s.Cutter.Kind switch
        {
            CutterKind.Roundover when Math.Abs(s.Cutter.EdgeRadius - radius) <= Tolerances.Gouge =>
                DepthLevels.Of(face, face - radius, s.StepDown).Select(z => (Out: s.Cutter.TipRadius, Z: z)),
            CutterKind.BallEnd => BallPasses(s.Cutter.Radius, radius, face),
            _ => throw new ArgumentException($"Cutter '{s.Cutter.Name}' does not round an edge of {radius} mm: a roundover of that radius or a ball-end does.", nameof(s)),
        };
        var built = new PathBuilder(s);
        var begun = false;
        var wood = face;
        foreach (var (distance, z) in passes)
        {
            var line = Beside(path, closed, distance);
            if (line is null) continue;
            if (closed) begun = Round(built, s, line, wood, z, begun);
            else
            {
                // Down a ramp along the edge and back to its beginning: a path that runs out in the waste begins in wood.
                built.EnterAbove(line.At(0), Math.Max(wood, z));
                built.Line(built.At with { Z = Math.Max(wood, z) });
                var ramp = Math.Min(line.Length, Math.Max(0, built.At.Z - z) / Math.Tan(s.RampAngle));
                if (ramp > 0)
                {
                    built.Follow(line, 0, ramp, z);
                    built.Follow(line, ramp, 0, z);
                }
                built.Follow(line, 0, line.Length, z);
            }
            wood = z;
        }
        return built.Build();
    }

    private static IEnumerable<(double Out, double Z)> BallPasses(double ball, double radius, double face)
    {
        var n = (int)Math.Ceiling(Math.PI / 2 / Scallop.AngleAround(radius, ball, SandedRidge));
        return Enumerable.Range(0, n + 1).Select(i => Math.SinCos(Math.PI / 2 * i / n))
            .Select(lean => ((radius + ball) * lean.Sin - radius, face - radius + (radius + ball) * lean.Cos - ball));
    }

    /// <summary>A lap at z, entered by a ramp along it where it lies in wood.</summary>
    private static bool Round(PathBuilder built, CutSettings s, PathLine line, double wood, double z, bool begun)
    {
        var start = begun ? line.Nearest(built.At.Plan) : line.MiddleOfLongestChord();
        if (!begun)
        {
            built.EnterAbove(line.At(start), wood);
            built.Line(built.At with { Z = Math.Max(wood, z) });
        }
        else built.Line(line.At(start), built.At.Z);
        var ramp = Math.Max(0, built.At.Z - z) / Math.Tan(s.RampAngle);
        built.Follow(line, start, start + ramp, z);
        built.Follow(line, start + ramp, start + ramp + line.Length, z);
        return true;
    }

    /// <summary>The path moved outward (to its right) by a distance and turned round; inward when negative. Null when nothing of it is left.</summary>
    private static PathLine? Beside(ImmutableArray<Point2> path, bool closed, double distance)
    {
        if (closed)
        {
            var moved = Offsets.Of(new Region(Loop.Of(path)), distance);
            return moved.Length == 0 ? null : new(moved[0].Loops[0].Reversed);
        }
        var edge = new PathLine(path, false);
        var points = new List<Point2>();
        for (var i = 0; i < path.Length; i++)
        {
            var before = i > 0 ? (path[i] - path[i - 1]).Unit : (path[1] - path[0]).Unit;
            var after = i + 1 < path.Length ? (path[i + 1] - path[i]).Unit : before;
            var bisector = (before + after).Unit;
            var moved = path[i] - distance / Math.Max(bisector.Dot(after), 0.5) * bisector.Left;
            // Inside a bend tighter than the distance the moved points come too near to the edge; those are left out.
            if (edge.DistanceTo(moved) >= Math.Abs(distance) - Tolerances.Flattening) points.Add(moved);
        }
        points.Reverse();
        return points.Count < 2 ? null : new(points, false);
    }
}
