using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Instrument;
using Solidbody.Programs;
using Solidbody.Proof.Checks;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof;

/// <summary>Proves a packet: reads its programs as they now are, cuts every blank by them, and compares the wood with the parts.</summary>
public static class Prover
{
    /// <param name="design">The parts as they should be.</param>
    /// <param name="setUps">How blanks lie and which programs run; proved in their order.</param>
    /// <param name="texts">Program texts by the file names the set-ups give.</param>
    /// <param name="settings">How finely, and what machine.</param>
    /// <param name="progress">Told of each stage.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>Figures, findings, wood and maps. The same input gives the same result, whatever the number of threads.</returns>
    public static ProofResult Prove(Design design, ImmutableArray<SetUp> setUps, IReadOnlyDictionary<string, string> texts,
        ProofSettings settings, IProgress<ProofProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(settings);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var results = ImmutableArray.CreateBuilder<PartResult>();
        var proofs = ImmutableArray.CreateBuilder<PartProof>();
        var ordered = setUps.OrderBy(s => s.Order).ToArray();
        var steps = ordered.Sum(s => s.Programs.Length) + design.Parts.Length;
        var done = 0;
        findings.AddRange(NotProved(design, ordered, texts));
        foreach (var part in design.Parts)
        {
            var own = ordered.Where(s => s.Part == part.Name).ToArray();
            var programs = ReadAll(own, texts, findings);
            if (own.Length == 0 || programs is null)
            {
                findings.Add(ProofFindings.PartNotCut(part.Name));
                done += own.Sum(s => s.Programs.Length) + 1;
                continue;
            }
            findings.AddRange(SetUpFindings.Of(part, own));
            var blank = own[0].Blank;
            var field = new ColumnField(Grid.Over(blank.Plan, settings.CellOf(blank)), blank.Z0, blank.Z1);
            foreach (var program in programs)
            {
                progress?.Report(new($"cutting {program.SetUp.Name}", (double)done++ / steps));
                findings.AddRange(MotionFindings.Of(program, settings));
                var report = BlankCutter.Cut(field, program, settings.ColletDiameter, settings.Threads, cancel);
                findings.AddRange(ContactFindings.Of(report, program, part, field));
            }
            progress?.Report(new($"comparing {part.Name}", (double)done++ / steps));
            var (result, proof, said) = PartJudge.Judge(part, own, programs, field, settings, cancel);
            results.Add(result);
            proofs.Add(proof);
            findings.AddRange(said);
        }
        progress?.Report(new("proved", 1));
        return new(results.ToImmutable(), findings.ToImmutable(), proofs.ToImmutable());
    }

    /// <summary>Set-ups of parts that the instrument does not have, and texts that no set-up names.</summary>
    private static IEnumerable<Finding> NotProved(Design design, IReadOnlyList<SetUp> setUps, IReadOnlyDictionary<string, string> texts)
    {
        foreach (var setUp in setUps)
            if (design.Parts.All(p => p.Name != setUp.Part)) yield return ProofFindings.NotProved($"{setUp.Title}, of the part {setUp.Part}");
        var named = setUps.SelectMany(s => s.Programs).Select(p => p.File).ToHashSet(StringComparer.Ordinal);
        foreach (var stray in texts.Keys.Where(t => !named.Contains(t)).Order(StringComparer.Ordinal)) yield return ProofFindings.NotProved(stray);
    }

    /// <summary>Every program of a part's set-ups, in order; null, with findings, when one is missing or unreadable.</summary>
    private static List<CutProgram>? ReadAll(IEnumerable<SetUp> setUps, IReadOnlyDictionary<string, string> texts, ImmutableArray<Finding>.Builder findings)
    {
        var programs = new List<CutProgram>();
        var whole = true;
        foreach (var setUp in setUps)
            foreach (var entry in setUp.Programs)
            {
                if (!texts.TryGetValue(entry.File, out var text))
                {
                    findings.Add(ProofFindings.ProgramMissing(setUp, entry.File));
                    whole = false;
                    continue;
                }
                var read = ProgramReader.Read(text, entry.File);
                findings.AddRange(read.Mistakes.Select(ProofFindings.ProgramUnreadable));
                if (!read.IsGood) whole = false;
                else programs.Add(CutProgram.Of(setUp, entry, read.Good));
            }
        return whole ? programs : null;
    }
}
