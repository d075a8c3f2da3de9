using System.Collections.Immutable;
using System.Globalization;
using Solidbody.Geometry;
using Solidbody.Programs.Writing;

namespace Solidbody.Programs;

/// <summary>Writes a program as RS274/NGC text, in the conservative subset of NISTIR 6556 that small controllers share.</summary>
/// <remarks>
/// The text begins with units, plane, absolute distance, no compensation and feed a minute; it rises to clearance in Z alone, starts the
/// spindle and waits, and only then travels. It ends at clearance with the spindle stopped.
/// Coordinates are rounded to the output grid before words are made of them, so roundings never add up. A rapid that changes plan
/// and height at once is written as two blocks, the higher way round, because rapids need not run straight (NISTIR 6556, section 3.5.1, from memory).
/// </remarks>
public static class ProgramWriter
{
    /// <summary>Feeds stay below this, mm/s: five digits of mm/min.</summary>
    private const double MostFeed = 99_999 / 60.0;

    /// <summary>The program's text: lines of at most 80 characters ending in LF, the same bytes for the same draft.</summary>
    /// <exception cref="ArgumentException">The motions break off, an arc's two radii differ, the first motion does not begin at clearance.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or outside what a block can hold.</exception>
    public static string Write(ProgramDraft draft, ProgramStyle style) => WriteSections(draft, style).Text;

    /// <summary>As <see cref="Write(ProgramDraft, ProgramStyle)"/>, and where in the text each section begins.</summary>
    public static WrittenProgram WriteSections(ProgramDraft draft, ProgramStyle style)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(style);
        style.Check();
        Check(draft);
        var grid = new OutputGrid(style);
        var blocks = new BlockWriter(style);
        var arcs = new ArcWriter(blocks, grid, style);
        var clearance = grid.Steps(draft.ClearanceHeight);

        foreach (var line in draft.Header.Lines) blocks.Comment(line);
        blocks.Block($"G17 {(style.Inches ? "G20" : "G21")} G40 G49 G54 G80 G90 G94");
        blocks.RiseTo(clearance);
        if (style.ToolNumber is { } tool)
        {
            blocks.Block(string.Create(CultureInfo.InvariantCulture, $"T{tool} M6"));
            if (style.LengthOffsets) blocks.Block(string.Create(CultureInfo.InvariantCulture, $"G43 H{tool}"));
            blocks.RiseTo(clearance);
        }
        blocks.Block(string.Create(CultureInfo.InvariantCulture, $"S{Math.Round(draft.SpindleSpeed * 60):0} M3"));
        blocks.Block(string.Create(CultureInfo.InvariantCulture, $"G4 P{style.SpindleDwellSeconds}"));
        if (style.AirWord is { } air) blocks.Block(string.Create(CultureInfo.InvariantCulture, $"M{air}"));

        var begun = false;
        var lines = ImmutableArray.CreateBuilder<int>();
        foreach (var section in draft.Sections)
        {
            lines.Add(blocks.Lines + 1);
            blocks.Comment(section.Title);
            for (var i = 0; i < section.Motions.Count; i++)
            {
                if (!begun) blocks.TravelTo(grid.Nearest(section.Motions[i].From) with { Z = clearance });
                begun = true;
                if (style.DrillingCycles && DrillCycle.Find(section.Motions, i) is var (cycle, last))
                {
                    blocks.Cycle(cycle, grid);
                    i = last;
                }
                else
                {
                    blocks.EndCycle();
                    Write(section.Motions[i], grid, blocks, arcs);
                }
            }
        }
        blocks.EndCycle();
        blocks.MoveTo(0, blocks.At with { Z = Math.Max(blocks.At.Z, clearance) }, 0);
        if (style.AirWord is not null) blocks.Block("M9");
        blocks.Block("M5");
        blocks.Block("M2");
        return new(blocks.ToString(), lines.ToImmutable());
    }

    private static void Write(in Motion motion, OutputGrid grid, BlockWriter blocks, ArcWriter arcs)
    {
        var to = grid.Nearest(motion.To);
        if (motion.IsArc) arcs.Write(motion);
        else if (motion.Kind == MotionKind.Line) blocks.MoveTo(1, to, motion.Feed);
        else
        {
            blocks.MoveTo(0, to.Z > blocks.At.Z ? blocks.At with { Z = to.Z } : to with { Z = blocks.At.Z }, 0);
            blocks.MoveTo(0, to, 0);
        }
    }

    private static void Check(ProgramDraft draft)
    {
        if (!(draft.ClearanceHeight > 0 && draft.ClearanceHeight < OutputGrid.Reach))
            throw new ArgumentOutOfRangeException(nameof(draft), draft.ClearanceHeight, $"Clearance height lies above the bed and below {OutputGrid.Reach} mm.");
        if (!(draft.SpindleSpeed * 60 >= 1 && draft.SpindleSpeed * 60 < 1e5))
            throw new ArgumentOutOfRangeException(nameof(draft), draft.SpindleSpeed, "Spindle speed is at least 1 and below 100 000 turns a minute.");
        Motion? last = null;
        foreach (var section in draft.Sections)
            for (var i = 0; i < section.Motions.Count; i++)
            {
                var motion = section.Motions[i];
                var place = $"motion {i} of '{section.Title}'";
                CheckNumbers(motion, place);
                if (last is { } before && !(before.To.DistanceTo(motion.From) <= Tolerances.Geometry))
                    throw new ArgumentException($"{place} begins at {motion.From}, but the one before it ended at {before.To}: motions join within {Tolerances.Geometry} mm.", nameof(draft));
                if (last is null && Math.Abs(motion.From.Z - draft.ClearanceHeight) > Tolerances.Geometry)
                    throw new ArgumentException($"{place} begins at Z {motion.From.Z}, but a program's first motion begins at clearance, Z {draft.ClearanceHeight}.", nameof(draft));
                last = motion;
            }
    }

    private static void CheckNumbers(in Motion motion, string place)
    {
        ReadOnlySpan<double> numbers = [motion.From.X, motion.From.Y, motion.From.Z, motion.To.X, motion.To.Y, motion.To.Z];
        foreach (var number in numbers)
            if (!(Math.Abs(number) < OutputGrid.Reach))
                throw new ArgumentOutOfRangeException(nameof(motion), number, $"{place}: coordinates are finite and below {OutputGrid.Reach} mm in size.");
        if (motion.Kind == MotionKind.Rapid) return;
        if (!(motion.Feed > 0 && motion.Feed < MostFeed))
            throw new ArgumentOutOfRangeException(nameof(motion), motion.Feed, $"{place}: a cutting feed is above 0 and below {MostFeed:0} mm/s.");
        if (!motion.IsArc) return;
        var (begin, end) = ((motion.From.Plan - motion.Centre).Length, (motion.To.Plan - motion.Centre).Length);
        if (!(begin > 0 && Math.Abs(begin - end) <= Tolerances.Output))
            throw new ArgumentException($"{place}: an arc's radii are {begin} mm at its start and {end} mm at its end; they are above 0 and differ by at most {Tolerances.Output} mm.", nameof(motion));
    }
}
