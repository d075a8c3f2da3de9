using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Machining.Toolpaths;

/// <summary>Shapes an edge with a ball-end in passes along it, from the face down the side; the edge follows its face, level or carved. Climb: wood on the cutter's right, so the edge is run backwards.</summary>
public static class EdgeFollowing
{
    /// <summary>Shapes stretches of an edge.</summary>
    /// <param name="s">A ball-end.</param>
    /// <param name="stretches">Wood on the left.</param>
    /// <param name="form">The edge's form: it is taken off the face along z.</param>
    /// <param name="face">The face, laid frame; it falls no steeper than 45° toward the edge.</param>
    /// <param name="top">Nothing stands higher.</param>
    /// <param name="scallop">Greatest ridge between two passes, mm.</param>
    /// <remarks>A pass touches the edge at one distance d inside it. There the shape is z = face − taken(d), its normal n ∝ (−∇face − tan φ · inward, 1) with tan φ = −taken′(d),
    /// and the ball's centre lies R further along n. Where the ball so placed would cut another point of the edge (a hollow in outline or face tighter than the ball), it is lifted until it rests.
    /// A ball reaches R below what it touches on the side: the waste there goes with it.</remarks>
    /// <exception cref="ArgumentException">Another kind of cutter.</exception>
    public static ImmutableArray<Motion> Path(CutSettings s, ImmutableArray<EdgeStretch> stretches, EdgeForm form, IHeight face, double top, double scallop)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(form);
        if (s.Cutter.Kind != CutterKind.BallEnd) throw new ArgumentException($"Cutter '{s.Cutter.Name}' does not follow an edge: a ball-end does.", nameof(s));
        var built = new PathBuilder(s);
        foreach (var stretch in stretches)
        {
            var passes = new EdgeContacts(stretch.Divided(), form, face).Tips(s.Cutter, scallop);
            if (stretch.Closed) Laps(built, s, passes, top);
            else Runs(built, s, passes, top);
        }
        return built.Build();
    }

    /// <summary>One lap below the other, each entered by a ramp from the one above.</summary>
    private static void Laps(PathBuilder built, CutSettings s, List<WorkPoint[]> passes, double top)
    {
        built.EnterAbove(passes[0][0].Plan, top);
        built.Line(built.At with { Z = Math.Max(top, passes[0][0].Z) });
        var start = 0;
        foreach (var lap in passes)
        {
            WorkPoint At(int k) => lap[(start + k) % lap.Length];
            built.Line(At(0).Plan, Math.Max(built.At.Z, At(0).Z));
            var ramp = new Ramp(built, s, At(0).Z);
            var i = 1;
            for (; i < lap.Length || ramp.Height > 0; i++) ramp.To(At(i));
            // The lap's end, and what the ramp left standing at its beginning.
            for (; i <= lap.Length + ramp.Length; i++) built.Line(At(i));
            start += ramp.Length;
        }
    }

    /// <summary>Each pass is entered where the one before began, moved sideways, ramped down along the edge, and run from its beginning.</summary>
    private static void Runs(PathBuilder built, CutSettings s, List<WorkPoint[]> passes, double top)
    {
        var from = passes[0][0] with { Z = Math.Max(top, passes[0][0].Z) };
        foreach (var run in passes)
        {
            built.EnterAbove(from.Plan, from.Z);
            built.Line(from);
            built.Line(run[0].Plan, Math.Max(from.Z, run[0].Z));
            var ramp = new Ramp(built, s, run[0].Z);
            var i = 0;
            while (ramp.Height > 0 && ++i < run.Length) ramp.To(run[i]);
            for (i = Math.Min(i, run.Length - 1); i >= 0; i--) built.Line(run[i]);
            foreach (var p in run.AsSpan(1)) built.Line(p);
            from = run[0];
        }
    }

    /// <summary>Follows a pass from above it, sinking at the ramp's angle until it is reached.</summary>
    private sealed class Ramp(PathBuilder built, CutSettings s, double floor)
    {
        /// <summary>How far above the pass the tip still is, mm.</summary>
        public double Height { get; private set; } = Math.Max(0, built.At.Z - floor);
        /// <summary>Points passed before the pass was reached.</summary>
        public int Length { get; private set; }
        private int points;

        public void To(WorkPoint p)
        {
            Height = Math.Max(0, Height - built.At.Plan.DistanceTo(p.Plan) * Math.Tan(s.RampAngle));
            built.Line(p with { Z = p.Z + Height });
            points++;
            if (Height > 0) Length = points;
        }
    }
}
