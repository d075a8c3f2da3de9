using Solidbody.Geometry;

namespace Solidbody.Proof.Cutting;

/// <summary>Cuts a blank's columns by a program, and notes what reaches into wood meanwhile. Bands of rows are independent, so threads share
/// them out and the result does not depend on how many there are.</summary>
internal static class BlankCutter
{
    private const int RowsPerBand = 64;

    /// <summary>The outer ring of a cutter that does not count as touching: a wall just made lies within rounding and chords of it. mm.</summary>
    private const double Ring = 0.01;

    /// <summary>How near a wall counts as beside the shank, mm beyond the cutter's own radius.</summary>
    private const double Beside = 0.5;

    /// <summary>The part of the radius within which a cutter that may not plunge has no edges (common practice, no source).</summary>
    private const double MiddleFactor = 0.3;

    /// <summary>Fall per distance in the plan from which a move counts as straight down rather than as a ramp: 45°.</summary>
    private const double Steep = 1;

    public static CutReport Cut(ColumnField field, CutProgram program, double colletDiameter, int threads, CancellationToken cancel)
    {
        var bands = (field.Grid.Rows + RowsPerBand - 1) / RowsPerBand;
        var reports = new CutReport[bands];
        var how = new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancel };
        Parallel.For(0, bands, how, band =>
            reports[band] = CutBand(field, program, colletDiameter, band * RowsPerBand, Math.Min((band + 1) * RowsPerBand, field.Grid.Rows)));
        return reports.Aggregate(new CutReport(), (all, one) => { all.Note(one); return all; });
    }

    private static CutReport CutBand(ColumnField field, CutProgram program, double colletDiameter, int firstRow, int endRow)
    {
        var report = new CutReport();
        var cutter = program.Entry.Cutter;
        var heights = field.Surface(program.Up);
        var grid = field.Grid;
        var (low, high) = (grid.Y(firstRow), grid.Y(endRow - 1));
        var bare = program.Profile.Shrunk(Ring);
        var flutes = CutterProfile.Disc(Math.Max(cutter.Radius - Ring, Ring));
        var thick = cutter.ShankDiameter > cutter.Diameter;
        var shank = CutterProfile.Disc(thick ? cutter.ShankDiameter / 2 - Ring : cutter.Radius + Beside);
        var middle = CutterProfile.Disc(Math.Max(cutter.Radius * MiddleFactor, Math.Min(cutter.Radius, field.Grid.Cell)));
        var collet = CutterProfile.Disc(colletDiameter / 2);
        var lowering = new Lowering(heights);
        var woodTop = program.WoodTop;
        foreach (ref readonly var m in program.Segments.AsSpan())
        {
            if (Misses(m, program.Profile.Radius, low, high) && Misses(m, Math.Max(shank.Radius, collet.Radius), low, high)) continue;
            var edges = m.LowestZ + cutter.FluteLength;
            if (m.IsRapid) Look(Contact.Rapid, m, bare, 0);
            if (edges < woodTop) Look(Contact.AboveFlutes, m, flutes, cutter.FluteLength);
            if (!cutter.Plunges && GoesDown(m)) Look(Contact.Middle, m, middle, 0);
            SweepKernel.Sweep(m, program.Profile, 0, grid, field.Stride, firstRow, endRow, ref lowering);
            if (edges < woodTop) Look(thick ? Contact.Shank : Contact.BesideShank, m, shank, cutter.FluteLength);
            if (colletDiameter > 0 && m.LowestZ + cutter.StickOut < woodTop) Look(Contact.Collet, m, collet, cutter.StickOut);
        }
        return report;

        void Look(Contact contact, in CutSegment m, in CutterProfile body, double lift)
        {
            var reaching = new Reaching(heights, field.Surface(program.Up == Side.Front ? Side.Back : Side.Front));
            var whole = m with { Behind = body.Radius, Ahead = body.Radius };
            SweepKernel.Sweep(whole, body, lift, grid, field.Stride, firstRow, endRow, ref reaching);
            if (reaching.Index >= 0) report.Note(contact, new(reaching.Deepest, reaching.Index, m.Line));
        }
    }

    private static bool GoesDown(in CutSegment m) => m.Z1 < m.Z0 - CutSegment.PlungeLength && m.Z0 - m.Z1 >= Steep * m.PlanLength;

    private static bool Misses(in CutSegment m, double radius, double low, double high) =>
        Math.Max(m.Y0, m.Y1) + radius < low || Math.Min(m.Y0, m.Y1) - radius > high;
}
