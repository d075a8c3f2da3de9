using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Machining.Planning;

/// <summary>A skin of wood left under the outline in place of tabs: where it lies.</summary>
internal static class SkinPlanner
{
    /// <summary>Just inside the outline, where the part's lower face is asked for, mm.</summary>
    private const double Inside = 1e-5;
    /// <summary>Distance between places asked, mm.</summary>
    private const double Spacing = 2;

    /// <summary>Heights between which the skin stands, laid frame: on the bed, on what the other side's outline cut has left, or above an edge shaped, bound or dropped there along most of the outline.</summary>
    /// <param name="laid">The part as it lies when the outline is cut.</param>
    /// <param name="cutFromBelow">How deep the other side's outline cut already is, mm.</param>
    /// <param name="thickness">mm.</param>
    public static (double Foot, double Top) Of(LaidPart laid, double cutFromBelow, double thickness)
    {
        var shape = new PartShape(laid.Part);
        var walked = new List<(double Length, Point2 At)>();
        foreach (var points in laid.Part.Outline.Loops.Where(l => l.SignedArea > 0).Select(l => l.Points))
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Length]);
                var n = (int)Math.Ceiling(a.DistanceTo(b) / Spacing);
                // By length: a corner has many short chords.
                for (var k = 0; k < n; k++) walked.Add((a.DistanceTo(b) / n, a + (k + 0.5) / n * (b - a) + Inside * (b - a).Unit.Left));
            }
        var under = walked.Select(w => (w.Length, Column: shape.At(w.At))).Where(w => !w.Column.IsEmpty)
            .Select(w => (w.Length, Z: laid.Z(laid.Up == Side.Front ? w.Column.Bottom : w.Column.Top))).OrderBy(w => w.Z).ToArray();
        var (half, middle) = (under.Sum(u => u.Length) / 2, 0.0);
        foreach (var (length, z) in under)
        {
            middle = z;
            if ((half -= length) <= 0) break;
        }
        return (cutFromBelow, Math.Max(cutFromBelow, middle) + thickness);
    }
}
