using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Shapes the edge of a level face with a cutter of the edge's own form: a roundover of its radius, or a tapered ball-end whose cone leans as the chamfer does. Climb: wood on the cutter's right, so the path is run backwards.</summary>
public static class EdgeForming
{
    /// <summary>How far the cone's cut goes on below the chamfer, in the waste, mm, measured on the face.</summary>
    private const double BelowChamfer = 0.3;

    /// <summary>How much the lean of a cone may differ from the chamfer's, radians: 0.05 mm over 15 mm.</summary>
    private const double LeanMatch = 0.003;

    /// <summary>Where the tip runs.</summary>
    /// <param name="Out">Axis outside of the edge, mm.</param>
    /// <param name="Down">Tip below the face, mm.</param>
    public readonly record struct Place(double Out, double Down);

    /// <summary>Where a cutter forms an edge; null when it has another form or is too small.</summary>
    /// <remarks>
    /// Roundover: axis outside by its flat tip, tip down by the radius.
    /// Cone of half angle β = 90° − the chamfer's angle, over a ball of radius T: its height over the tip is T (1 − sin β) + (r − T cos β) / tan β from r = T cos β on. Set equal to the chamfer
    /// at every distance d inside, r = a + d: down = (w + a) / tan β − T (1 / sin β − 1), for any a ≥ T cos β with a + w no more than the cone's radius.
    /// </remarks>
    public static Place? PlaceOf(Cutter cutter, EdgeForm form)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        switch (cutter.Kind, form)
        {
            case (CutterKind.Roundover, EdgeForm.Rounded(var radius)) when Math.Abs(cutter.EdgeRadius - radius) <= Tolerances.Gouge:
                return new(cutter.TipRadius, radius);
            case (CutterKind.TaperedBallEnd, EdgeForm.Chamfered(var width, var angle)) when Math.Abs(cutter.Angle + angle - Math.PI / 2) <= LeanMatch:
                var least = cutter.TipRadius * Math.Cos(cutter.Angle);
                var most = cutter.Radius - width;
                if (!(least <= most)) return null;
                var beside = Math.Min(least + BelowChamfer, most);
                return new(beside, (width + beside) / Math.Tan(cutter.Angle) - cutter.TipRadius * (1 / Math.Sin(cutter.Angle) - 1));
            default:
                return null;
        }
    }

    /// <summary>Shapes the edge, in steps from above.</summary>
    /// <param name="s">A cutter of the edge's form.</param>
    /// <param name="path">The edge, counter-clockwise, wood on its left. Open paths run on past the edge at both ends.</param>
    /// <param name="closed">Whether the last point joins the first.</param>
    /// <param name="form">The edge's form.</param>
    /// <param name="face">Height of the face.</param>
    /// <exception cref="ArgumentException">The cutter has another form.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, ImmutableArray<Point2> path, bool closed, EdgeForm form, double face)
    {
        ArgumentNullException.ThrowIfNull(s);
        if (PlaceOf(s.Cutter, form) is not { } place)
            throw new ArgumentException($"Cutter '{s.Cutter.Name}' does not leave this edge ({form}): a roundover of its radius or a cone of its lean does.", nameof(s));
        var built = new PathBuilder(s);
        if (LineOf(path, closed, place) is not { } line) return built.Build();
        var begun = false;
        var wood = face;
        foreach (var z in DepthLevels.Of(face, face - place.Down, s.StepDown))
        {
            if (closed) begun = Round(built, s, line, wood, z, begun);
            else Along(built, s, line, wood, z);
            wood = z;
        }
        return built.Build();
    }

    /// <summary>The line the axis runs at every level; null when nothing of it is left.</summary>
    internal static PathLine? LineOf(ImmutableArray<Point2> path, bool closed, Place place) => Beside(path, closed, place.Out);

    /// <summary>Down a ramp along the edge and back to its beginning, then the whole way: a path that runs out in the waste begins in wood.</summary>
    private static void Along(PathBuilder built, CutSettings s, PathLine line, double wood, double z)
    {
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

    /// <summary>The path moved outward (to its right) by a distance and turned round. Null when nothing of it is left.</summary>
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
