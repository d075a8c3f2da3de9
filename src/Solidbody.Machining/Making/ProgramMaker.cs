using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Solidbody.Geometry;
using Solidbody.Machining.Planning;
using Solidbody.Machining.Timing;
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
        var paths = plan.SetUps.Select(s => new ImmutableArray<Motion>[s.Operations.Length]).ToArray();
        Parallel.ForEach(operations, new ParallelOptions { CancellationToken = cancel }, job =>
        {
            progress?.Report($"{job.Planned.SetUp.Name}: {job.Operation.Name}");
            var laid = OperationPath.Of(job.Operation, job.Planned.SetUp.ClearanceHeight, shop.Machine);
            paths[job.SetUp][job.Place] = [.. laid.Select(m => FeedLimit.Of(WorkMotion.Of(m, job.Planned.SetUp.Placement), shop.Machine))];
        });

        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var setUps = ImmutableArray.CreateBuilder<SetUp>();
        var number = 1;
        for (var s = 0; s < plan.SetUps.Length; s++)
        {
            var planned = plan.SetUps[s];
            var entries = ImmutableArray.CreateBuilder<ProgramEntry>();
            foreach (var run in Runs(planned.Operations, paths[s]))
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

    private sealed record Run(Cutter Cutter, List<(Operation Operation, ImmutableArray<Motion> Motions)> Parts);

    /// <summary>Neighbouring operations of one cutter; operations without motions (nothing to do there) are left out.</summary>
    private static List<Run> Runs(ImmutableArray<Operation> operations, ImmutableArray<Motion>[] paths)
    {
        var runs = new List<Run>();
        foreach (var (operation, motions) in operations.Zip(paths))
        {
            if (motions.IsEmpty) continue;
            if (runs.Count == 0 || runs[^1].Cutter != operation.Cutter) runs.Add(new(operation.Cutter, []));
            runs[^1].Parts.Add((operation, motions));
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
        for (var k = 0; k < pieces.Length; k++)
        {
            var name = Name(number + k, pieces.Length == 1 ? "" : $"-{k + 1}-of-{pieces.Length}");
            var motions = pieces[k].SelectMany(s => s.Motions).ToList();
            var entry = new ProgramEntry
            {
                File = $"programs/{name}.nc",
                Name = name,
                Cutter = cutter,
                SpindleSpeed = feeds.SpindleSpeed,
                Feed = motions.Max(m => m.Feed),
                Seconds = MotionTime.Seconds(motions, shop.Machine) + style.SpindleDwellSeconds,
                Bounds = MotionBounds.Of(motions),
                Operations = [.. pieces[k].Select(s => s.Title)],
            };
            yield return (entry, ProgramWriter.Write(whole with { Header = ProgramHeader.Of(setUp, cutter, name), Sections = pieces[k] }, style));
        }
    }

    /// <summary>Sections joined by rapids at clearance.</summary>
    private static ImmutableArray<ProgramSection> Linked(Run run, double clearance)
    {
        var sections = ImmutableArray.CreateBuilder<ProgramSection>();
        WorkPoint? at = null;
        foreach (var (operation, motions) in run.Parts)
        {
            var start = motions[0].From;
            if (Math.Abs(start.Z - clearance) > Tolerances.Geometry || Math.Abs(motions[^1].To.Z - clearance) > Tolerances.Geometry)
                throw new InvalidOperationException($"The path of '{operation.Name}' must begin and end at clearance, Z {clearance}.");
            IEnumerable<Motion> linked = at is { } from && from.DistanceTo(start) > Tolerances.Geometry
                ? motions.Prepend(new(MotionKind.Rapid, from, start, default, 0))
                : motions;
            sections.Add(new(operation.Name, [.. linked]));
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
