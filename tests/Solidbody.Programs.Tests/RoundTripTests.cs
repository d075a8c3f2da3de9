using CsCheck;
using Solidbody.Geometry;

namespace Solidbody.Programs.Tests;

/// <summary>What is written reads back as what was meant, within the output's resolution.</summary>
public class RoundTripTests
{
    private const double Clearance = 40;
    private static readonly ProgramHeader Header = new("body", "1, front up: outline", "up-spiral 6", "first dowel, spoilboard", ProgramHeader.UsualCaution);

    /// <summary>One random step: what kind, how far, how the arc bends.</summary>
    private sealed record Step(int Kind, double X, double Y, double Z, double Bend, double Feed);

    private static readonly Gen<double> Bends = Gen.OneOf(Gen.Double[0.01, 6.2], Gen.Const(2 * Math.PI), Gen.Const(Math.PI), Gen.Double[1e-6, 1e-2]);
    private static readonly Gen<double> Reaches = Gen.OneOf(Gen.Double[-300, 300], Gen.Double[-0.02, 0.02], Gen.Double[-3, 3]);
    private static readonly Gen<Step> Steps =
        from kind in Gen.Int[0, 4]
        from x in Reaches
        from y in Reaches
        from z in Gen.Double[-5, 30]
        from bend in Bends
        from feed in Gen.Double[1, 100]
        select new Step(kind, x, y, z, bend, feed);

    private static readonly Gen<ProgramStyle> Styles =
        from decimals in Gen.Int[2, 4]
        from inches in Gen.Bool
        from numbers in Gen.Bool
        from comments in Gen.Bool
        from arcs in Gen.Bool
        from tool in Gen.Int[-1, 20]
        from cycles in Gen.Bool
        from terse in Gen.Bool
        from air in Gen.Int[6, 8]
        select new ProgramStyle
        {
            Decimals = decimals,
            Inches = inches,
            LineNumbers = numbers,
            Comments = comments,
            Arcs = arcs,
            ToolNumber = tool < 0 ? null : tool,
            LengthOffsets = tool >= 0 && cycles,
            DrillingCycles = cycles,
            Terse = terse,
            AirWord = air == 6 ? null : air,
        };

    /// <summary>A list that joins exactly: rapids in the plan or in Z, lines, arcs and helices about random centres.</summary>
    private static List<Motion> Motions(Step[] steps)
    {
        var at = new WorkPoint(steps[0].X, steps[0].Y, Clearance);
        var motions = new List<Motion>();
        foreach (var step in steps)
        {
            var motion = step.Kind switch
            {
                0 => new Motion(MotionKind.Rapid, at, new(step.X, step.Y, at.Z), default, 0),
                1 => new Motion(MotionKind.Rapid, at, at with { Z = step.Z }, default, 0),
                2 => new Motion(MotionKind.Line, at, new(step.X, step.Y, step.Z), default, step.Feed),
                _ => Arc(step, at),
            };
            motions.Add(motion);
            at = motion.To;
        }
        return motions;
    }

    private static Motion Arc(Step step, WorkPoint at)
    {
        var kind = step.Kind == 3 ? MotionKind.ArcClockwise : MotionKind.ArcCounterClockwise;
        var centre = at.Plan + new Point2(step.X + 1e-3, step.Y);
        var end = step.Bend == 2 * Math.PI ? at.Plan : centre + (at.Plan - centre).Turned(step.Kind == 3 ? -step.Bend : step.Bend);
        return new(kind, at, new(end.X, end.Y, at.Z + step.Bend), centre, step.Feed);
    }

    private static string Write(List<Motion> motions, ProgramStyle style) => ProgramWriter.Write(new()
    {
        Header = Header,
        ClearanceHeight = Clearance,
        SpindleSpeed = 300,
        Sections = [new("outline", motions)],
    }, style);

    private static double StepOf(ProgramStyle style) => style.Inches ? 25.4 * Math.Pow(10, -style.Decimals - 1) : Math.Pow(10, -style.Decimals);

    [Fact]
    public void Every_written_program_is_read_without_a_mistake_and_passes_every_end_within_half_a_step() =>
        Steps.Array[1, 40].Select(Styles).Sample((steps, style) =>
        {
            var motions = Motions(steps);
            var result = ProgramReader.Read(Write(motions, style), "t.nc");
            Assert.True(result.IsGood, string.Join('\n', result.Mistakes));
            var read = result.Good;
            Assert.Equal(style.ToolNumber, read.Tool);
            Assert.Equal(Clearance, read.Start!.LowestRise, StepOf(style));

            // Each meant end is met, in order, by some read end: half a step each way, so nothing adds up however long the list.
            var allowed = StepOf(style) / 2 + 1e-9;
            var at = read.Start.At;
            var next = 0;
            foreach (var motion in motions)
            {
                while (!Near(at, motion.To, allowed))
                {
                    Assert.True(next < read.Motions.Length, $"no written end at {motion.To}");
                    at = read.Motions[next++].To;
                }
            }
        }, iter: 1000);

    private static bool Near(WorkPoint a, WorkPoint b, double allowed) =>
        Math.Abs(a.X - b.X) <= allowed && Math.Abs(a.Y - b.Y) <= allowed && Math.Abs(a.Z - b.Z) <= allowed;

    [Fact]
    public void A_single_arc_keeps_its_way_its_length_and_its_shape() =>
        Steps.Select(Styles).Sample((step, style) =>
        {
            var arc = Arc(step with { Kind = 3 + step.Kind % 2 }, new(step.X, step.Y, Clearance));
            var read = ProgramReader.Read(Write([arc], style), "t.nc").Good;
            // Rounded ends and centre: three half diagonals of a step. Chords: the flattening besides.
            var allowed = 1.5 * Math.Sqrt(2) * StepOf(style) + (read.Motions.Any(m => m.IsArc) ? 0 : Tolerances.Flattening);
            foreach (var motion in read.Motions.Where(m => m.Kind != MotionKind.Rapid))
                for (var i = 0; i <= 8; i++)
                {
                    var p = PlanAt(motion, i / 8.0);
                    Assert.InRange(DistanceTo(arc, p), 0, allowed);
                }
            var turned = read.Motions.Where(m => m.IsArc).Sum(m => m.Sweep);
            if (turned != 0 && read.Motions.All(m => m.IsArc)) Assert.Equal(arc.Sweep, turned, Math.Max(1e-6, 12 * StepOf(style) / (arc.From.Plan - arc.Centre).Length));
        }, iter: 1500);

    private static Point2 PlanAt(Motion m, double t) => m.IsArc
        ? m.Centre + (m.From.Plan - m.Centre).Turned(m.Sweep * t)
        : m.From.Plan + t * (m.To.Plan - m.From.Plan);

    /// <summary>Distance in the plan from a point to an arc: to its circle inside its sweep, to its ends outside it.</summary>
    private static double DistanceTo(Motion arc, Point2 p)
    {
        var (a, b) = (arc.From.Plan - arc.Centre, p - arc.Centre);
        var turn = Math.Atan2(a.Cross(b), a.Dot(b)) * Math.Sign(arc.Sweep);
        if (turn < 0) turn += 2 * Math.PI;
        return turn <= Math.Abs(arc.Sweep)
            ? Math.Abs(b.Length - a.Length)
            : Math.Min(p.DistanceTo(arc.From.Plan), p.DistanceTo(arc.To.Plan));
    }

    [Fact]
    public void The_same_draft_gives_the_same_text() =>
        Steps.Array[1, 20].Select(Styles).Sample((steps, style) => Write(Motions(steps), style) == Write(Motions(steps), style), iter: 200);

    [Fact]
    public void Lines_are_short_plain_and_without_slips_of_number() =>
        Steps.Array[1, 40].Select(Styles).Sample((steps, style) =>
        {
            var text = Write(Motions(steps), style);
            Assert.EndsWith("M5\nM2\n", style.LineNumbers ? StripNumbers(text, style.Terse) : text, StringComparison.Ordinal);
            foreach (var line in text.Split('\n'))
            {
                Assert.InRange(line.Length, 0, 80);
                Assert.DoesNotContain('\r', line);
                if (line.StartsWith('(')) continue;
                Assert.DoesNotContain(Words(line), w => w.EndsWith("-0", StringComparison.Ordinal) || w.EndsWith('.') || w.Contains('.', StringComparison.Ordinal) && w.EndsWith('0') || w.Contains('E', StringComparison.Ordinal));
            }
        }, iter: 500);

    /// <summary>Words of a block, whether blanks stand between them or not.</summary>
    private static string[] Words(string line) => System.Text.RegularExpressions.Regex.Replace(line, " ?([A-Z])", " $1").Trim().Split(' ');

    private static string StripNumbers(string text, bool terse) =>
        string.Join('\n', text.Split('\n').Select(l => l.StartsWith('N') ? terse ? l[1..].TrimStart("0123456789".ToCharArray()) : l[(l.IndexOf(' ', StringComparison.Ordinal) + 1)..] : l));
}
