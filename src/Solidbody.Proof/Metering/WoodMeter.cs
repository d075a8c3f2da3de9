using System.Collections.Immutable;
using Solidbody.Geometry;
using Solidbody.Programs;
using Solidbody.Proof.Cutting;

namespace Solidbody.Proof.Metering;

/// <summary>Cuts wood by a program's motions and measures what each of them takes: volume, depth, how far it cuts and how far it goes through
/// air, and how much of the cutter's circumference is in wood. It knows nothing of who planned the motions or why.</summary>
/// <remarks>
/// To measure one path:
/// <code>
/// var field = new ColumnField(Grid.Over(blank.Plan, 0.05), blank.Z0, blank.Z1);           // part frame; 0.05 mm columns
/// var cuts = WoodMeter.Cut(field, new Placement(Side.Front, 0, new(0, 0, -blank.Z0)), cutter, motions);
/// var peak = cuts.Where(c => !c.Descends).Max(c => c.Engagement);
/// </code>
/// Motions go in steps of a quarter of the cutter's radius at most. A step's engagement is the union of the directions under which it met
/// columns (by more than 0.05 mm), each with a column to either side; a motion's is the greatest of its steps'. It is not under the true arc by
/// more than half a degree, and over it by 1.5 cell/(R sin α) at most at the inner end of an arc α, by acos(1 − 1.5 cell/R) where a cut just
/// grazes, and by what changes within a step.
/// Cutting is judged in stretches of about a millimetre, since a shorter one may fall between two columns.
/// </remarks>
public static class WoodMeter
{
    /// <summary>Longest step, mm, and the same by the cutter's radius and by the columns' side.</summary>
    private const double LongestStep = 1, StepByRadius = 0.25, StepByCell = 2.5;
    /// <summary>Length over which taking wood is judged, mm.</summary>
    private const double Stretch = 1;
    /// <summary>Less than this is nothing, mm: what chords of an arc leave along a wall that is passed twice.</summary>
    private const double Nothing = Tolerances.Flattening;

    /// <summary>Measures every program of the set-ups, cutting each part's blank in their order.</summary>
    /// <param name="setUps">How blanks lie and which programs run.</param>
    /// <param name="texts">Program texts by the file names the set-ups give.</param>
    /// <param name="settings">How fine the columns are.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">A text is missing or cannot be read: prove the packet first.</exception>
    public static ImmutableArray<ProgramCut> Measure(IEnumerable<SetUp> setUps, IReadOnlyDictionary<string, string> texts, ProofSettings settings, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(settings);
        var parts = setUps.OrderBy(s => s.Order).GroupBy(s => s.Part).Select(p => p.ToArray()).ToArray();
        var cuts = new List<ProgramCut>[parts.Length];
        Parallel.For(0, parts.Length, new ParallelOptions { MaxDegreeOfParallelism = settings.Threads, CancellationToken = cancel }, i =>
        {
            var blank = parts[i][0].Blank;
            var field = new ColumnField(Grid.Over(blank.Plan, settings.CellOf(blank)), blank.Z0, blank.Z1);
            cuts[i] = [];
            foreach (var setUp in parts[i])
                foreach (var entry in setUp.Programs)
                {
                    cancel.ThrowIfCancellationRequested();
                    cuts[i].Add(new(setUp, entry, Cut(field, setUp.Placement, entry.Cutter, MotionsOf(entry, texts))));
                }
        });
        return [.. cuts.SelectMany(c => c).OrderBy(c => c.SetUp.Order)];
    }

    /// <summary>Cuts the wood by motions of one cutter, and says what each took.</summary>
    /// <param name="field">The wood, part frame; it is cut.</param>
    /// <param name="placement">How it lies: part frame → work frame.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="motions">Work frame, in order.</param>
    /// <returns>One for each motion, in order.</returns>
    public static ImmutableArray<MotionCut> Cut(ColumnField field, Placement placement, Cutter cutter, IReadOnlyList<Motion> motions)
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(motions);
        var profile = CutterProfile.Of(cutter);
        var longest = Math.Max(StepByCell * field.Grid.Cell, Math.Min(LongestStep, StepByRadius * profile.Radius));
        ImmutableArray<Motion> steps = [.. motions.SelectMany((m, i) => MotionSteps.Of(m, longest, i))];
        var tally = new Tally(motions.Count);
        var arc = new ContactArc();
        CutSegment? before = null;
        foreach (var segment in CutPath.Of(steps, placement, profile, field.Highest(placement.Up)))
        {
            var step = segment with { Behind = profile.Radius, Ahead = profile.Radius };
            if (before is { } b && !Joins(b, step)) tally.EndStretch();
            arc.Clear();
            var taking = new Taking(field, placement.Up, step, profile.Radius, arc);
            SweepKernel.Sweep(step, profile, 0, field.Grid, field.Stride, 0, field.Grid.Rows, ref taking);
            tally.Note(step.Line, Length(step), taking.Sum * field.Grid.Cell * field.Grid.Cell, taking.Deepest, cutter.IsFlat ? arc.Angle : 0);
            before = step;
        }
        tally.EndStretch();
        return [.. motions.Select(tally.Of)];
    }

    private static ImmutableArray<Motion> MotionsOf(ProgramEntry entry, IReadOnlyDictionary<string, string> texts)
    {
        if (!texts.TryGetValue(entry.File, out var text)) throw new ArgumentException($"The text of {entry.File} is missing.", nameof(texts));
        var read = ProgramReader.Read(text, entry.File);
        return read.IsGood ? read.Good.Motions : throw new ArgumentException($"{entry.File} cannot be read: {read.Mistakes[0]}", nameof(texts));
    }

    private static bool Joins(in CutSegment a, in CutSegment b) => a.X1 == b.X0 && a.Y1 == b.Y0 && a.Z1 == b.Z0 && a.IsRapid == b.IsRapid;

    private static double Length(in CutSegment s) => Math.Sqrt(s.PlanLength * s.PlanLength + (s.Z1 - s.Z0) * (s.Z1 - s.Z0));

    /// <summary>Adds up steps into their motions, and judges stretches of them.</summary>
    private sealed class Tally(int motions)
    {
        private readonly double[] volume = new double[motions], depth = new double[motions], cut = new double[motions], engagement = new double[motions];
        private readonly List<(int Motion, double Length)> stretch = [];
        private double stretchLength, stretchDepth;

        public void Note(int motion, double length, double taken, double deepest, double arc)
        {
            volume[motion] += taken;
            depth[motion] = Math.Max(depth[motion], deepest);
            engagement[motion] = Math.Max(engagement[motion], arc);
            stretch.Add((motion, length));
            stretchLength += length;
            stretchDepth = Math.Max(stretchDepth, deepest);
            if (stretchLength >= Stretch) EndStretch();
        }

        public void EndStretch()
        {
            if (stretchDepth > Nothing)
                foreach (var (motion, length) in stretch) cut[motion] += length;
            stretch.Clear();
            (stretchLength, stretchDepth) = (0, 0);
        }

        public MotionCut Of(Motion motion, int i) => new(motion, volume[i], depth[i], Math.Min(cut[i], motion.Length), engagement[i]);
    }
}
