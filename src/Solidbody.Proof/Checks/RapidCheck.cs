using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>Whether rapids keep to the two ways that are safe on any machine: straight up or down, or level at the clearance height.</summary>
/// <remarks>A rapid need not run straight: each axis may go at its own pace (NISTIR 6556, section 3.5.1, from memory). So a rapid that
/// changes plan and height at once has no known path, and one in the plan may pass anywhere in the box of its ends.</remarks>
/// <param name="Slanting">First rapid that changes plan and height at once; line 0 for none.</param>
/// <param name="Low">The lowest rapid in the plan below the clearance height.</param>
/// <param name="IntoBed">The deepest rapid down into the spoilboard, away from registration holes.</param>
internal sealed record RapidCheck(Trespass Slanting, Trespass Low, Trespass IntoBed)
{
    public static RapidCheck Of(CutProgram program)
    {
        Trespass slanting = default, low = default, bed = default;
        var setUp = program.SetUp;
        foreach (var m in program.Motions.Where(m => m.Kind == MotionKind.Rapid))
        {
            var across = m.From.Plan.DistanceTo(m.To.Plan);
            var climb = Math.Abs(m.To.Z - m.From.Z);
            if (across > Tolerances.Geometry && climb > Tolerances.Geometry) slanting = slanting.Is ? slanting : new(climb, m.To, m.Line);
            var below = setUp.ClearanceHeight - Math.Min(m.From.Z, m.To.Z);
            if (across > Tolerances.Geometry && below > ProofLimits.Travel) low = low.Or(below, m.To, m.Line);
            if (m.To.Z < m.From.Z && -m.To.Z > ProofLimits.Travel && -m.To.Z > Dowels.Depth(setUp, m.To.Plan, program.Entry.Cutter.Radius)) bed = bed.Or(-m.To.Z, m.To, m.Line);
        }
        return new(slanting, low, bed);
    }
}
