using Solidbody.Geometry;
using Solidbody.Instrument;

namespace Solidbody.Proof.Comparing;

/// <summary>A line over the plan on which the wood is looked at closely, from <paramref name="From"/> along x or y.</summary>
/// <param name="From">Part frame.</param>
/// <param name="Along">(1, 0) or (0, 1).</param>
/// <param name="Length">mm.</param>
internal readonly record struct FineLine(Point2 From, Point2 Along, double Length)
{
    /// <summary>Between two lines over the whole part, mm: a wall or a fin longer than this meets one.</summary>
    private const double Spacing = 10;

    /// <summary>How far a feature's own lines reach beyond it, mm.</summary>
    private const double Beyond = 2;

    /// <summary>Lines over the whole part in both directions, and two through the middle of every pocket and hole.</summary>
    public static IReadOnlyList<FineLine> Over(Part part)
    {
        var lines = new List<FineLine>();
        var whole = part.Outline.Bounds.Grown(ProofLimits.OutlineBand);
        for (var x = whole.X0 + Spacing / 2; x < whole.X1; x += Spacing) lines.Add(new(new(x, whole.Y0), new(0, 1), whole.Height));
        for (var y = whole.Y0 + Spacing / 2; y < whole.Y1; y += Spacing) lines.Add(new(new(whole.X0, y), new(1, 0), whole.Width));
        foreach (var pocket in part.Pockets) Cross(pocket.Region.Bounds);
        foreach (var hole in part.Holes) Cross(new Box2(hole.Centre.X, hole.Centre.Y, hole.Centre.X, hole.Centre.Y).Grown(hole.Diameter / 2));
        return lines;

        void Cross(Box2 box)
        {
            var around = box.Grown(Beyond);
            lines.Add(new(new(around.X0, box.Centre.Y), new(1, 0), around.Width));
            lines.Add(new(new(box.Centre.X, around.Y0), new(0, 1), around.Height));
        }
    }
}
