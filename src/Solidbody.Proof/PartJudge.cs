using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Instrument;
using Solidbody.Programs;
using Solidbody.Proof.Checks;
using Solidbody.Proof.Comparing;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof;

/// <summary>Judges one part's cut wood: its deviations against the limits, its measures against the file.</summary>
internal static class PartJudge
{
    public static (PartResult Result, PartProof Proof, ImmutableArray<Finding> Findings) Judge(
        Part part, IReadOnlyList<SetUp> setUps, IReadOnlyList<CutProgram> programs, ColumnField field, ProofSettings settings, CancellationToken cancel)
    {
        var (tabs, tabFindings) = TabFindings.Sort(part, setUps);
        var (skin, skinFindings) = SkinFindings.Sort(part, setUps);
        var comparison = PartComparison.Of(field, programs, new PartShape(part), new TabAllowance(tabs, skin), settings.Threads, cancel);
        var namer = new PlaceNamer(part);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(OffSpots(comparison, part, namer, programs, settings));
        findings.AddRange(tabFindings);
        findings.AddRange(TabFindings.Missing(part, tabs, field));
        findings.AddRange(skinFindings);
        findings.AddRange(SkinFindings.Missing(part, skin, field));
        var calipers = new CaliperTaker(programs, setUps[0].Blank);
        findings.AddRange(RegistrationFindings.Of(setUps, programs));
        var measures = ImmutableArray.CreateBuilder<MeasureResult>();
        foreach (var measure in part.Measures)
        {
            var (result, found) = calipers.Take(measure);
            measures.Add(result);
            if (!found || !result.IsWithin) findings.Add(ProofFindings.Measure(part.Name, result, found));
            cancel.ThrowIfCancellationRequested();
        }
        var gouge = comparison.Spots.OrderBy(s => s.Deviation).Cast<Spot?>().FirstOrDefault(s => s!.Value.Deviation < 0);
        var left = comparison.Spots.OrderByDescending(s => s.Deviation).Cast<Spot?>().FirstOrDefault(s => s!.Value.Deviation > 0);
        var figures = new PartResult
        {
            Part = part.Name,
            DeepestGouge = Math.Round(-gouge?.Deviation ?? 0, 4),
            DeepestGougeAt = gouge is { } g ? namer.Place(g.At, g.Face) : "nowhere",
            MostLeftover = Math.Round(left?.Deviation ?? 0, 4),
            MostLeftoverAt = left is { } l ? namer.Place(l.At, l.Face) : "nowhere",
            Measures = measures.ToImmutable(),
        };
        return (figures, new(part.Name, field, comparison.Front, comparison.Back), findings.ToImmutable());
    }

    /// <summary>One finding for each feature that is past its limit, at its worst place, worst first.</summary>
    private static IEnumerable<Finding> OffSpots(PartComparison comparison, Part part, PlaceNamer namer, IReadOnlyList<CutProgram> programs, ProofSettings settings)
    {
        var limits = new LeftoverLimit(part, settings.Scallop);
        return comparison.Spots
            .Where(s => s.Deviation < 0 ? -s.Deviation > ProofLimits.Gouge : s.Deviation > limits.At(s.At, s.Face))
            .GroupBy(s => (s.Face, Deep: s.Deviation < 0, Feature: namer.Feature(s.At, s.Face)))
            .Select(g => g.MaxBy(s => Math.Abs(s.Deviation)))
            .OrderByDescending(s => Math.Abs(s.Deviation)).ThenBy(s => s.At.X).ThenBy(s => s.At.Y).ThenBy(s => s.Face)
            .Select(s => s.Deviation < 0
                ? ProofFindings.Gouge(namer.Place(s.At, s.Face), -s.Deviation, LastCut(programs, s))
                : ProofFindings.Leftover(namer.Place(s.At, s.Face), s.Deviation, limits.At(s.At, s.Face), LastCut(programs, s)));
    }

    /// <summary>The program and line that cut deepest over a spot, from the side it is seen from; empty when none did.</summary>
    private static string LastCut(IReadOnlyList<CutProgram> programs, Spot spot)
    {
        var (height, culprit) = (double.PositiveInfinity, "");
        foreach (var program in programs.Where(p => p.Up == spot.Face))
        {
            var (left, line) = program.At(spot.At);
            if (left < Math.Min(height, program.WoodTop)) (height, culprit) = (left, $"; last cut by {program.Entry.File} line {line}");
        }
        return culprit;
    }
}
