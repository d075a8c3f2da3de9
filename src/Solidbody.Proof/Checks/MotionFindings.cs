using Solidbody.Findings;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Checks;

/// <summary>What is said of a program's motions before any wood is looked at.</summary>
internal static class MotionFindings
{
    public static IEnumerable<Finding> Of(CutProgram program, ProofSettings settings)
    {
        var file = program.Entry.File;
        var highest = program.SetUp.KeepOuts.Select(k => k.Box.Z1).Append(program.WorkTop).Max();
        if (program.Start is { } start && start.LowestRise < highest) yield return ProofFindings.StartsLow(file, start, highest);
        var check = MotionCheck.Of(program);
        if (check.OutsideTravel.Is) yield return ProofFindings.OutsideTravel(file, check.OutsideTravel.Line, check.OutsideTravel.At, check.OutsideTravel.By);
        if (check.IntoBed.Is) yield return ProofFindings.IntoBed(file, check.IntoBed.Line, check.IntoBed.At, check.IntoBed.By);
        var rapids = RapidCheck.Of(program);
        if (rapids.Slanting.Is) yield return ProofFindings.SlantingRapid(file, rapids.Slanting.Line, rapids.Slanting.At, rapids.Slanting.By);
        if (rapids.Low.Is) yield return ProofFindings.LowRapid(file, rapids.Low.Line, rapids.Low.At, rapids.Low.By, program.SetUp.ClearanceHeight);
        if (rapids.IntoBed.Is) yield return ProofFindings.RapidIntoBed(file, rapids.IntoBed.Line, rapids.IntoBed.At, rapids.IntoBed.By);
        if (check.FeedWithoutSpindle > 0) yield return ProofFindings.SpindleStands(file, check.FeedWithoutSpindle);
        foreach (var finding in EntryFindings.Of(program, settings)) yield return finding;
        foreach (var (keepOut, what, entry) in KeepOutCheck.Of(program, settings.ColletDiameter))
            yield return ProofFindings.KeepOutEntered(file, entry.Line, entry.At, keepOut.Name, what, entry.By);
    }
}
