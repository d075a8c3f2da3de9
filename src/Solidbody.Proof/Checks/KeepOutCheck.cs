using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>Whether cutter, shank or collet enters a keep-out on the way.</summary>
internal static class KeepOutCheck
{
    /// <summary>Longest piece looked at as one, mm, near a keep-out.</summary>
    private const double Step = 0.5;

    /// <summary>The deepest entry into each keep-out that is entered, with what enters it.</summary>
    public static IEnumerable<(KeepOut KeepOut, string What, Trespass Entry)> Of(CutProgram program, double colletDiameter)
    {
        var cutter = program.Entry.Cutter;
        (string What, CutterProfile Body, double Lift, double Top)[] bodies =
        [
            ("cutter", program.Profile, 0, cutter.FluteLength),
            ("shank", CutterProfile.Disc(cutter.ShankDiameter / 2), cutter.FluteLength, cutter.StickOut),
            ("collet", CutterProfile.Disc(colletDiameter / 2), cutter.StickOut, double.PositiveInfinity),
        ];
        foreach (var keepOut in program.SetUp.KeepOuts)
            foreach (var (what, body, lift, top) in bodies)
            {
                var entry = Deepest(program, keepOut.Box, body, lift, top);
                if (entry.Is) yield return (keepOut, what, entry);
            }
    }

    private static Trespass Deepest(CutProgram program, Box3 box, in CutterProfile body, double lift, double top)
    {
        Trespass worst = default;
        if (!(body.Radius > 0)) return worst;
        var around = box.Plan.Grown(body.Radius);
        var ends = new List<WorkPoint>();
        foreach (var motion in program.Motions)
        {
            if (Math.Min(motion.From.Z, motion.To.Z) + lift >= box.Z1 || Math.Max(motion.From.Z, motion.To.Z) + top <= box.Z0) continue;
            ends.Clear();
            Chords.AddEnds(motion, ends);
            var from = motion.From;
            foreach (var to in ends)
            {
                if (around.Touches(Box2.Around([from.Plan, to.Plan])))
                    foreach (var p in Along(from, to))
                        worst = worst.Or(Entry(box, body, lift, top, p), p, motion.Line);
                from = to;
            }
        }
        return worst;
    }

    /// <summary>How far the body reaches below the box's top, where it is nearest to the axis; 0 or less when it stays out, beside, above or below.</summary>
    private static double Entry(Box3 box, in CutterProfile body, double lift, double top, WorkPoint p)
    {
        if (p.Z + top <= box.Z0) return 0;
        var dx = Math.Max(0, Math.Max(box.X0 - p.X, p.X - box.X1));
        var dy = Math.Max(0, Math.Max(box.Y0 - p.Y, p.Y - box.Y1));
        var d = Math.Sqrt(dx * dx + dy * dy);
        return d < body.Radius ? box.Z1 - Math.Max(box.Z0, p.Z + lift + body.Height(d)) : 0;
    }

    private static IEnumerable<WorkPoint> Along(WorkPoint a, WorkPoint b)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(a.DistanceTo(b) / Step));
        for (var i = 0; i <= steps; i++)
        {
            var k = (double)i / steps;
            yield return new(a.X + (b.X - a.X) * k, a.Y + (b.Y - a.Y) * k, a.Z + (b.Z - a.Z) * k);
        }
    }
}
