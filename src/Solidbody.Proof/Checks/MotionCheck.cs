using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>The worst of one kind of trespass in a program: how far, where (work frame) and in which line.</summary>
internal readonly record struct Trespass(double By, WorkPoint At, int Line)
{
    public Trespass Or(double by, WorkPoint at, int line) => by > By ? new(by, at, line) : this;
    public bool Is => Line > 0;
}

/// <summary>What a program's motions do whatever wood lies there: leave the travel, enter the bed, feed without a turning spindle.</summary>
/// <param name="OutsideTravel">Farthest outside the machine's reach.</param>
/// <param name="IntoBed">Deepest below the allowance, away from registration holes.</param>
/// <param name="FeedWithoutSpindle">First such line; 0 when there is none.</param>
internal sealed record MotionCheck(Trespass OutsideTravel, Trespass IntoBed, int FeedWithoutSpindle)
{
    public static MotionCheck Of(CutProgram program)
    {
        Trespass travel = default, bed = default;
        var still = 0;
        var setUp = program.SetUp;
        var ends = new List<WorkPoint>();
        foreach (var motion in program.Motions)
        {
            if (still == 0 && motion.Kind != MotionKind.Rapid && !(motion.SpindleSpeed > 0)) still = motion.Line;
            ends.Clear();
            ends.Add(motion.From);
            Chords.AddEnds(motion, ends);
            foreach (var p in ends)
            {
                var outside = Outside(setUp.Travel, p);
                if (outside > ProofLimits.Travel) travel = travel.Or(outside, p, motion.Line);
                var below = -setUp.BedAllowance - p.Z;
                if (below > ProofLimits.Travel && below > bed.By && -p.Z > Dowels.Depth(setUp, p.Plan, program.Entry.Cutter.Radius) + ProofLimits.Travel) bed = new(below, p, motion.Line);
            }
        }
        return new(travel, bed, still);
    }

    private static double Outside(Box3 box, WorkPoint p) => new[] { box.X0 - p.X, p.X - box.X1, box.Y0 - p.Y, p.Y - box.Y1, box.Z0 - p.Z, p.Z - box.Z1 }.Max();
}
