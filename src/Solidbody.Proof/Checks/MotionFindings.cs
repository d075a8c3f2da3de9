using Solidbody.Findings;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>What is said of a program's motions before any wood is looked at.</summary>
internal static class MotionFindings
{
    public static IEnumerable<Finding> Of(CutProgram program, ProofSettings settings)
    {
        var file = program.Entry.File;
        if (program.Start is { } start && start.LowestRise < program.WorkTop) yield return ProofFindings.StartsLow(file, start, program.WorkTop);
        var check = MotionCheck.Of(program);
        if (check.OutsideTravel.Is) yield return ProofFindings.OutsideTravel(file, check.OutsideTravel.Line, check.OutsideTravel.At, check.OutsideTravel.By);
        if (check.IntoBed.Is) yield return ProofFindings.IntoBed(file, check.IntoBed.Line, check.IntoBed.At, check.IntoBed.By);
        if (check.FeedWithoutSpindle > 0) yield return ProofFindings.SpindleStands(file, check.FeedWithoutSpindle);
        foreach (var (keepOut, what, entry) in KeepOutCheck.Of(program, settings.ColletDiameter))
            yield return ProofFindings.KeepOutEntered(file, entry.Line, entry.At, keepOut.Name, what, entry.By);
    }
}
