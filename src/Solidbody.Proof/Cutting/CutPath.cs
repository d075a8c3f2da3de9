using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.Proof.Cutting;

/// <summary>Turns a program's motions into the straight pieces that can touch wood, as the surface that lies up sees them.</summary>
internal static class CutPath
{
    /// <summary>Tallest level step that stands for a hollow cutter's sloping move, mm.</summary>
    private const double LevelStep = 0.001;

    /// <param name="motions">One program's motions, work frame, in order.</param>
    /// <param name="placement">How the part lies.</param>
    /// <param name="profile">The program's cutter.</param>
    /// <param name="woodTop">Height of the blank's face that lies up, as the surface sees it: pieces wholly above it touch nothing and are left out.</param>
    public static CutSegment[] Of(ImmutableArray<Motion> motions, Placement placement, in CutterProfile profile, double woodTop)
    {
        var segments = new List<CutSegment>(motions.Length);
        var ends = new List<WorkPoint>();
        var up = placement.Up == Side.Front ? 1 : -1;
        Piece? before = null;
        foreach (var motion in motions)
        {
            ends.Clear();
            Chords.AddEnds(motion, ends);
            var from = placement.ToPart(motion.From);
            foreach (var end in ends)
            {
                var to = placement.ToPart(end);
                if (Math.Min(up * from.Z, up * to.Z) < woodTop)
                    foreach (var piece in Pieces(from, to, up, profile))
                    {
                        segments.Add(piece.AsSegment(before, profile, motion.Line, motion.Kind == MotionKind.Rapid));
                        before = piece;
                    }
                else before = null;
                from = to;
            }
        }
        for (var i = 0; i < segments.Count; i++)
            if (i == segments.Count - 1 || !Continues(segments[i], segments[i + 1])) segments[i] = segments[i] with { Ahead = profile.Radius };
        return [.. segments];
    }

    /// <summary>Whether the next piece starts where this one ends, so that its own start looks after the columns there. A rapid looks after
    /// none that a feed should have cut: it is asked whether it meets wood.</summary>
    private static bool Continues(in CutSegment a, in CutSegment b) => a.X1 == b.X0 && a.Y1 == b.Y0 && a.Z1 == b.Z0 && a.IsRapid == b.IsRapid;

    private static IEnumerable<Piece> Pieces(PartPoint from, PartPoint to, int up, CutterProfile profile)
    {
        var whole = new Piece(from.X, from.Y, up * from.Z, to.X, to.Y, up * to.Z);
        if (profile.Shape != ProfileShape.Hollow || whole.IsPlunge || whole.Z0 == whole.Z1) return [whole];
        var steps = (int)Math.Ceiling(Math.Abs(whole.Z1 - whole.Z0) / LevelStep);
        return Enumerable.Range(0, steps).Select(i => whole.LevelStepOf(i, steps));
    }

    private readonly record struct Piece(double X0, double Y0, double Z0, double X1, double Y1, double Z1)
    {
        private double PlanLength => Math.Sqrt((X1 - X0) * (X1 - X0) + (Y1 - Y0) * (Y1 - Y0));
        public bool IsPlunge => PlanLength < CutSegment.PlungeLength;
        private double Slope => IsPlunge ? 0 : (Z1 - Z0) / PlanLength;

        public Piece LevelStepOf(int i, int steps)
        {
            double At(double a, double b, double k) => a + (b - a) * k / steps;
            var z = At(Z0, Z1, i + 0.5);
            return new(At(X0, X1, i), At(Y0, Y1, i), z, At(X0, X1, i + 1), At(Y0, Y1, i + 1), z);
        }

        /// <summary>Which columns' contact can lie on this piece, given the piece before.</summary>
        /// <remarks>
        /// Along the piece itself the contact runs from q ahead of the start to q ahead of the end, |q| ≤ <see cref="CutterProfile.MostContactOffset"/>.
        /// At a corner between unit directions D₁ and D₂ the corner is the lowest place for contact normals n with n·D₁ ≥ 0 ≥ n·D₂,
        /// so n·D₂ ≥ −|D₁ − D₂|: a lune behind the start no wider than R |D₁ − D₂| √(1 + g²); twice that is taken, which also covers the cone's
        /// longer reach. Steep pieces, sharp corners, and flat cutters on a slope (whose rim is their contact) take the whole end instead.
        /// </remarks>
        public CutSegment AsSegment(Piece? before, in CutterProfile c, int line, bool rapid)
        {
            var g = Slope;
            var most = c.MostContactOffset(g);
            var ahead = Takes(c, g) ? c.Radius : Math.Max(0, Math.Sign(g) * most);
            var behind = c.Radius;
            if (before is { } b && !b.IsPlunge && !IsPlunge && !Takes(c, g) && !(c.Shape == ProfileShape.Flat && b.Slope != 0)
                && b.X1 == X0 && b.Y1 == Y0 && b.Z1 == Z0)
            {
                var lune = 2 * c.Radius * Turn(b) * Math.Sqrt(1 + g * g);
                if (lune < c.Radius / 2) behind = lune + Math.Max(0, -Math.Sign(g) * most);
            }
            return new(X0, Y0, Z0, X1, Y1, Z1, IsPlunge ? c.Radius : Math.Min(behind, c.Radius), IsPlunge ? c.Radius : ahead, line, rapid);
        }

        /// <summary>Whether a slope is so steep for this cutter that both ends are taken whole.</summary>
        private static bool Takes(in CutterProfile c, double g) => c.Shape switch
        {
            ProfileShape.Ball => Math.Abs(g) > 1,
            ProfileShape.Cone => Math.Abs(g) > c.Slope / 2,
            _ => g != 0,
        };

        private double Turn(Piece b)
        {
            var (l1, l2) = (b.SpatialLength, SpatialLength);
            double dx = (b.X1 - b.X0) / l1 - (X1 - X0) / l2, dy = (b.Y1 - b.Y0) / l1 - (Y1 - Y0) / l2, dz = (b.Z1 - b.Z0) / l1 - (Z1 - Z0) / l2;
            return Math.Sqrt(dx * dx + dy * dy + dz * dz);
        }

        private double SpatialLength => Math.Sqrt(PlanLength * PlanLength + (Z1 - Z0) * (Z1 - Z0));
    }
}
