using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Solidbody.Geometry;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Timing;
using Solidbody.Machining.Timing.Least;
using Solidbody.Programs;
using Solidbody.Shop;

namespace Solidbody.Machining.Making;

/// <summary>Turns a plan into programs: a toolpath for every operation, a program for every cutter's turn in a set-up.</summary>
public static class ProgramMaker
{
    /// <summary>The programs, numbered in running order over all set-ups.</summary>
    /// <param name="plan">The plan; its findings are the caller's to heed.</param>
    /// <param name="shop">Machine and rack.</param>
    /// <param name="progress">Told the operation at work.</param>
    /// <param name="cancel">Heeded between operations.</param>
    public static MadePrograms Make(Plan plan, ShopDefinition shop, IProgress<string>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        // Operations are independent; each lands in its own place, so the order of their making leaves no trace.
        var operations = plan.SetUps.SelectMany((planned, s) => planned.Operations.Select((operation, o) => (SetUp: s, Place: o, Planned: planned, Operation: operation))).ToList();
        var paths = plan.SetUps.Select(s => new MadeOperation[s.Operations.Length]).ToArray();
        Parallel.ForEach(operations, new ParallelOptions { CancellationToken = cancel }, job =>
        {
            progress?.Report($"{job.Planned.SetUp.Name}: {job.Operation.Name}");
            var laid = OperationPath.Of(job.Operation, job.Planned.SetUp.ClearanceHeight, shop.Machine);
            paths[job.SetUp][job.Place] = new(job.Operation, [.. laid.Select(m => FeedLimit.Of(WorkMotion.Of(m, job.Planned.SetUp.Placement), shop.Machine))],
                laid.IsEmpty ? 0 : LeastTime.Seconds(job.Operation, job.Planned.SetUp.ClearanceHeight, shop.Machine));
        });

        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var setUps = ImmutableArray.CreateBuilder<SetUp>();
        var number = 1;
        for (var s = 0; s < plan.SetUps.Length; s++)
        {
            var planned = plan.SetUps[s];
            var entries = ImmutableArray.CreateBuilder<ProgramEntry>();
            foreach (var run in Runs(paths[s]))
            {
                cancel.ThrowIfCancellationRequested();
                foreach (var (entry, text) in Write(planned.SetUp, run, shop, number))
                {
                    entries.Add(entry);
                    texts.Add(entry.File, text);
                    number++;
                }
            }
            setUps.Add(planned.SetUp with { Programs = entries.ToImmutable() });
        }
        return new(setUps.ToImmutable(), texts.ToImmutable(), []);
    }

    /// <param name="Operation">What is cut.</param>
    /// <param name="Motions">The path that cuts it, work frame; none when there is nothing to do.</param>
    /// <param name="LeastSeconds">What no path could do better.</param>
    private sealed record MadeOperation(Operation Operation, ImmutableArray<Motion> Motions, double LeastSeconds);

    private sealed record Run(Cutter Cutter, List<MadeOperation> Parts);

    /// <summary>Neighbouring operations of one cutter; operations without motions (nothing to do there) are left out.</summary>
    private static List<Run> Runs(IEnumerable<MadeOperation> operations)
    {
        var runs = new List<Run>();
        foreach (var made in operations.Where(o => !o.Motions.IsEmpty))
        {
            if (runs.Count == 0 || runs[^1].Cutter != made.Operation.Cutter) runs.Add(new(made.Operation.Cutter, []));
            runs[^1].Parts.Add(made);
        }
        return runs;
    }

    /// <summary>The run's program; several, one after another, where the controller holds no program that long.</summary>
    private static IEnumerable<(ProgramEntry Entry, string Text)> Write(SetUp setUp, Run run, ShopDefinition shop, int number)
    {
        var (cutter, feeds, style) = (run.Cutter, run.Parts[0].Operation.Feeds, ControllerHabits.Of(shop, run.Cutter));
        string Name(int at, string part) => string.Create(CultureInfo.InvariantCulture, $"{at:00}-{setUp.Name}-{FileWord(cutter.Name)}{part}");
        var whole = new ProgramDraft
        {
            Header = ProgramHeader.Of(setUp, cutter, Name(number, "")),
            ClearanceHeight = setUp.ClearanceHeight,
            SpindleSpeed = feeds.SpindleSpeed,
            Sections = Linked(run, setUp.ClearanceHeight),
        };
        ImmutableArray<ImmutableArray<ProgramSection>> pieces = shop.Machine.LongestProgram is { } most
            ? new ProgramDivision(whole, style, feeds.PlungeFeed).Into(most)
            : [whole.Sections];
        var seconds = pieces.Select(p => Seconds(p, shop.Machine)).ToArray();
        var together = pieces.SelectMany((p, k) => p.Select((s, i) => (s.Number, Seconds: seconds[k][i]))).GroupBy(s => s.Number).ToDictionary(g => g.Key, g => g.Sum(s => s.Seconds));
        for (var k = 0; k < pieces.Length; k++)
        {
            var name = Name(number + k, pieces.Length == 1 ? "" : $"-{k + 1}-of-{pieces.Length}");
            var motions = pieces[k].SelectMany(s => s.Motions).ToList();
            var written = ProgramWriter.WriteSections(whole with { Header = ProgramHeader.Of(setUp, cutter, name), Sections = pieces[k] }, style);
            var entry = new ProgramEntry
            {
                File = $"programs/{name}.nc",
                Name = name,
                Cutter = cutter,
                SpindleSpeed = feeds.SpindleSpeed,
                Feed = motions.Max(m => m.Feed),
                Seconds = seconds[k].Sum() + style.SpindleDwellSeconds,
                Bounds = MotionBounds.Of(motions),
                Operations = [.. pieces[k].Select((s, i) => new OperationEntry(s.Title, written.SectionLines[i], seconds[k][i],
                    run.Parts[s.Number].LeastSeconds * seconds[k][i] / together[s.Number]))],
            };
            yield return (entry, written.Text);
        }
    }

    /// <summary>How long each section of a program takes, from the program's beginning at rest to its end.</summary>
    private static double[] Seconds(ImmutableArray<ProgramSection> sections, Machine machine)
    {
        var each = MotionTime.Each([.. sections.SelectMany(s => s.Motions)], machine);
        var from = 0;
        return [.. sections.Select(s => each[from..(from += s.Motions.Count)].Sum())];
    }

    /// <summary>Sections joined by rapids at clearance.</summary>
    private static ImmutableArray<ProgramSection> Linked(Run run, double clearance)
    {
        var sections = ImmutableArray.CreateBuilder<ProgramSection>();
        WorkPoint? at = null;
        foreach (var (operation, motions, _) in run.Parts)
        {
            var start = motions[0].From;
            if (Math.Abs(start.Z - clearance) > Tolerances.Geometry || Math.Abs(motions[^1].To.Z - clearance) > Tolerances.Geometry)
                throw new InvalidOperationException($"The path of '{operation.Name}' must begin and end at clearance, Z {clearance}.");
            IEnumerable<Motion> linked = at is { } from && from.DistanceTo(start) > Tolerances.Geometry
                ? motions.Prepend(new(MotionKind.Rapid, from, start, default, 0))
                : motions;
            sections.Add(new(operation.Name, [.. linked]) { Number = sections.Count });
            at = motions[^1].To;
        }
        return sections.ToImmutable();
    }

    /// <summary>A name as a file name holds it: lower case letters, digits and hyphens.</summary>
    private static string FileWord(string name)
    {
        var word = new StringBuilder();
        foreach (var c in name.ToLowerInvariant())
            if (char.IsAsciiLetterOrDigit(c)) word.Append(c);
            else if (word.Length > 0 && word[^1] != '-') word.Append('-');
        return word.ToString().Trim('-');
    }
}
