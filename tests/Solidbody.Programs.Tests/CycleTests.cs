using Solidbody.Geometry;

namespace Solidbody.Programs.Tests;

/// <summary>Drilling cycles: as the standard's examples say, and as the writer means them.</summary>
public class CycleTests
{
    private static IEnumerable<(MotionKind Kind, WorkPoint To)> Read(WorkPoint at, string words)
    {
        var text = FormattableString.Invariant($"G21 G17 G90 G94\nG0 Z{at.Z}\nG0 X{at.X} Y{at.Y}\nF300\n{words}\nM2\n");
        var read = ProgramReader.Read(text, "t.nc");
        Assert.True(read.IsGood, string.Join('\n', read.Mistakes));
        return read.Good.Motions.Select(m => (m.Kind, m.To));
    }

    private static (MotionKind, WorkPoint) To(MotionKind kind, double x, double y, double z) => (kind, new(x, y, z));

    private static void Same(IEnumerable<(MotionKind Kind, WorkPoint To)> expected, IEnumerable<(MotionKind Kind, WorkPoint To)> read)
    {
        var (a, b) = (expected.ToArray(), read.ToArray());
        Assert.Equal(a.Length, b.Length);
        Assert.All(a.Zip(b), pair => Assert.True(pair.First.Kind == pair.Second.Kind && pair.First.To.DistanceTo(pair.Second.To) < 1e-9, $"{pair.First} is read as {pair.Second}"));
    }

    [Fact] // NISTIR 6556, section 3.5.16.2, first example; from memory.
    public void The_standards_first_example() => Same(
        [To(MotionKind.Rapid, 4, 5, 3), To(MotionKind.Rapid, 4, 5, 2.8), To(MotionKind.Line, 4, 5, 1.5), To(MotionKind.Rapid, 4, 5, 3)],
        Read(new(1, 2, 3), "G90 G81 G98 X4 Y5 Z1.5 R2.8"));

    [Fact] // NISTIR 6556, section 3.5.16.2, second example; from memory.
    public void The_standards_second_example_repeats_at_three_places() => Same(
        [
            To(MotionKind.Rapid, 1, 2, 4.8),
            To(MotionKind.Rapid, 5, 7, 4.8), To(MotionKind.Line, 5, 7, 4.2), To(MotionKind.Rapid, 5, 7, 4.8),
            To(MotionKind.Rapid, 9, 12, 4.8), To(MotionKind.Line, 9, 12, 4.2), To(MotionKind.Rapid, 9, 12, 4.8),
            To(MotionKind.Rapid, 13, 17, 4.8), To(MotionKind.Line, 13, 17, 4.2), To(MotionKind.Rapid, 13, 17, 4.8),
        ],
        Read(new(1, 2, 3), "G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3"));

    [Fact] // Worked from the rule of section 3.5.16.4; the 0.254 mm above the last bottom from memory.
    public void Pecks_clear_their_chips() => Same(
        [
            To(MotionKind.Rapid, 10, 0, 10), To(MotionKind.Rapid, 10, 0, 1), To(MotionKind.Line, 10, 0, -3),
            To(MotionKind.Rapid, 10, 0, 1), To(MotionKind.Rapid, 10, 0, -2.746), To(MotionKind.Line, 10, 0, -7),
            To(MotionKind.Rapid, 10, 0, 1), To(MotionKind.Rapid, 10, 0, -6.746), To(MotionKind.Line, 10, 0, -10), To(MotionKind.Rapid, 10, 0, 10),
        ],
        Read(new(0, 0, 10), "G90 G98 G83 X10 Y0 Z-10 R1 Q4"));

    [Fact] // Section 3.5.20: G99 ends at R. Numbers are sticky (3.5.16.1).
    public void The_next_hole_keeps_what_was_said_and_may_start_low() => Same(
        [
            To(MotionKind.Rapid, 1, 0, 10), To(MotionKind.Rapid, 1, 0, 2), To(MotionKind.Line, 1, 0, -3), To(MotionKind.Rapid, 1, 0, 2),
            To(MotionKind.Rapid, 5, 0, 2), To(MotionKind.Line, 5, 0, -3), To(MotionKind.Rapid, 5, 0, 2),
            To(MotionKind.Rapid, 5, 0, 10),
        ],
        Read(new(0, 0, 10), "G99 G82 X1 Z-3 R2 P0.5\nX5\nG80\nG0 Z10"));

    [Fact]
    public void The_writer_says_holes_as_cycles_and_the_reader_understands_them()
    {
        var motions = Holes(60, 60, (10, 20), (30, 20), (30, 45));
        var text = Write(motions, new() { DrillingCycles = true, Comments = false });
        Assert.Contains("X10 Y20\nG98\nG83 X10 Y20 Z20 R41 Q8 F300\nX30 Y20\nX30 Y45\nG80\n", text, StringComparison.Ordinal);
        Assert.True(text.Length < Write(motions, new() { Comments = false }).Length);
        var read = ProgramReader.Read(text, "t.nc").Good;
        foreach (var hole in motions.Where(m => m.Kind == MotionKind.Line).GroupBy(m => m.To.Plan))
        {
            var own = read.Motions.Where(m => m.Kind == MotionKind.Line && m.To.Plan == hole.Key).ToArray();
            Assert.Equal(hole.Min(m => m.To.Z), own.Min(m => m.To.Z));
            // From the height where drilling begins on, no bite is deeper than the motions' deepest.
            Assert.All(own.Skip(1).Zip(own), pair => Assert.InRange(pair.Second.To.Z - pair.First.To.Z, 0, 8 + 1e-9));
            Assert.InRange(41 - own[0].To.Z, 0, 8 + 1e-9);
        }
        Assert.All(read.Motions.Where(m => m.Kind == MotionKind.Rapid && m.From.Plan != m.To.Plan), m => Assert.Equal(60, m.From.Z));
    }

    [Fact]
    public void Holes_joined_low_return_to_where_drilling_begins()
    {
        var text = Write([.. Holes(60, 41, (10, 20)), new(MotionKind.Rapid, new(10, 20, 41), new(30, 20, 41), default, 0), .. Holes(41, 60, (30, 20))], new() { DrillingCycles = true, Comments = false });
        Assert.Contains("G99\nG83 X10 Y20", text, StringComparison.Ordinal);
        var read = ProgramReader.Read(text, "t.nc").Good;
        Assert.Equal(41, read.Motions.Single(m => m.Kind == MotionKind.Rapid && m.From.Plan != m.To.Plan).From.Z);
    }

    [Fact]
    public void What_is_no_hole_is_written_move_by_move()
    {
        WorkPoint a = new(10, 20, 60), b = new(10, 20, 41), c = new(10, 20, 30), d = new(12, 20, 30);
        Motion[] ramp = [new(MotionKind.Rapid, a, b, default, 0), new(MotionKind.Line, b, c, default, 5), new(MotionKind.Line, c, d, default, 20), new(MotionKind.Rapid, d, d with { Z = 60 }, default, 0)];
        Assert.DoesNotContain("G8", Write([.. ramp], new() { DrillingCycles = true, Comments = false }).Replace("G80 G90", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_changer_with_lengths_air_and_terse_words_change_words_not_places()
    {
        var motions = Holes(60, 60, (10, 20), (30.5, 0.25));
        var style = new ProgramStyle { Comments = false, ToolNumber = 4, LengthOffsets = true, AirWord = 7, DrillingCycles = true };
        var text = Write(motions, style);
        Assert.Contains("T4 M6\nG43 H4\nZ60\nS18000 M3\nG4 P3\nM7\n", text, StringComparison.Ordinal);
        Assert.EndsWith("M9\nM5\nM2\n", text, StringComparison.Ordinal);
        var terse = Write(motions, style with { Terse = true });
        Assert.Contains("T4M6\nG43H4\nZ60\n", terse, StringComparison.Ordinal);
        Assert.Contains("X30.5Y.25\n", terse, StringComparison.Ordinal);
        Assert.DoesNotContain(' ', terse);
        Assert.Equal(ProgramReader.Read(text, "t.nc").Good.Motions, ProgramReader.Read(terse, "t.nc").Good.Motions);
    }

    [Fact]
    public void A_length_that_is_another_cutters_is_refused_and_a_length_makes_the_height_unknown()
    {
        Assert.Contains("another cutter's length", ProgramReader.Read("G21 G90\nG0 Z5\nT1 M6\nG43 H2\nG0 Z5\nX1 Y1\nM2", "t.nc").Mistakes[0].Wrong, StringComparison.Ordinal);
        Assert.Contains("straight up", ProgramReader.Read("G21 G90\nG0 Z5\nT1 M6\nG43 H1\nX1 Y1\nM2", "t.nc").Mistakes[0].Wrong, StringComparison.Ordinal);
        Assert.True(ProgramReader.Read("G21 G90\nG0 Z5\nT1 M6\nG43 H1\nG0 Z5\nX1 Y1\nM2", "t.nc").IsGood);
    }

    [Fact]
    public void Habits_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Write(Holes(60, 60, (1, 1)), new() { LengthOffsets = true }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Write(Holes(60, 60, (1, 1)), new() { AirWord = 9 }));
    }

    /// <summary>Holes from 40 down to 20 in bites of 8, drilled from 41.</summary>
    private static List<Motion> Holes(double start, double end, params (double X, double Y)[] places)
    {
        var motions = new List<Motion>();
        var at = new WorkPoint(places[0].X, places[0].Y, start);
        void Go(MotionKind kind, WorkPoint to)
        {
            if (at.DistanceTo(to) > 0) motions.Add(new(kind, at, to, default, kind == MotionKind.Line ? 5 : 0));
            at = to;
        }
        foreach (var (x, y) in places)
        {
            Go(MotionKind.Rapid, new(x, y, at.Z));
            Go(MotionKind.Rapid, at with { Z = 41 });
            Go(MotionKind.Line, at with { Z = 32 });
            foreach (var z in new[] { 24.0, 20 })
            {
                Go(MotionKind.Rapid, at with { Z = 41 });
                Go(MotionKind.Rapid, at with { Z = (z == 24 ? 32 : 24) + 0.5 });
                Go(MotionKind.Line, at with { Z = z });
            }
            Go(MotionKind.Rapid, at with { Z = end });
        }
        return motions;
    }

    private static string Write(List<Motion> motions, ProgramStyle style) => ProgramWriter.Write(new()
    {
        Header = new("body", "1, front up: holes", "drill 6", "first dowel, spoilboard", ProgramHeader.UsualCaution),
        ClearanceHeight = 60,
        SpindleSpeed = 300,
        Sections = [new("holes", motions)],
    }, style);
}
