using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Solidbody.Findings;
using Solidbody.Geometry;
using Solidbody.Programs;

namespace Solidbody.App.Tests.WholeJob;

/// <summary>Real programs of the example, damaged in one place: the proof stops, and says where.</summary>
public sealed class DamageTests
{
    private static Job Example => Job.Example;

    [Theory]
    [InlineData("body")]
    [InlineData("neck")]
    [InlineData("fretboard")]
    public void Undamaged_a_part_passes_alone(string part) => Assert.True(Example.ProveAgain(part).Passes);

    [Theory]
    [InlineData("body-front", "neck pocket, floor", "neck pocket")]
    [InlineData("body-front", "bridge pickup, rough in narrow bites", "bridge pickup")]
    [InlineData("body-back", "controls, rough in narrow bites", "controls")]
    [InlineData("neck-front", "rod channel", "rod channel")]
    [InlineData("neck-back", "headstock back", "headstock back")]
    [InlineData("fretboard", "fret slots", "fret")]
    public void A_z_deeper_by_two_tenths_is_a_gouge_there(string setUp, string operation, string feature)
    {
        var (_, entry, _) = Example.ProgramWith(setUp, operation);
        var edit = ProgramEdit.Deeper(Example.Made.Texts[entry.File], operation, 0.2);
        var gouges = Stopping(setUp, entry, edit.Text).Where(f => f.Code == "PROOF-01").ToList();
        var gouge = gouges.First(f => f.Place.Contains(feature, StringComparison.Ordinal));
        // A slot's floor is crowned: between two heights of its line only part of the change shows.
        Assert.InRange(Millimetres(gouge), feature == "fret" ? 0.06 : 0.15, 0.25);
        Assert.InRange(LineNamed(gouge, entry), edit.Line, edit.Last);
    }

    [Theory] // The line by which the cutter last goes down to its depth: what follows is cut too high.
    [InlineData("body-front", "bridge pickup, walls", "bridge pickup")]
    [InlineData("body-front", "bridge screw pilots, 4 of 2.5 mm", "bridge screw pilot")]
    [InlineData("body-back", "outline, finish", "outline")]
    [InlineData("neck-back", "heel screw pilots, 4 of 3.2 mm", "heel screw pilot")]
    [InlineData("neck-back", "headstock back", "headstock back")]
    [InlineData("fretboard", "outline, finish", "outline")]
    [InlineData("fretboard", "dots, 10 of 6 mm", "dot")]
    public void A_line_left_out_is_wood_left_there(string setUp, string operation, string feature)
    {
        var (_, entry, _) = Example.ProgramWith(setUp, operation);
        var edit = ProgramEdit.WithoutLastDescent(Example.Made.Texts[entry.File], operation);
        var left = Stopping(setUp, entry, edit.Text).First(f => f.Code == "PROOF-02" && f.Place.Contains(feature, StringComparison.Ordinal));
        Assert.True(Millimetres(left) > 0.1, left.Figure);
    }

    [Theory]
    [InlineData("body-front", "neck pocket, walls")]
    [InlineData("neck-back", "outline, finish")]   // laid at 45°: a Y off by three tenths is two tenths across
    [InlineData("fretboard", "outline, finish")]
    public void A_coordinate_off_by_three_tenths_is_a_gouge_there(string setUp, string operation)
    {
        var (placed, entry, _) = Example.ProgramWith(setUp, operation);
        var text = Example.Made.Texts[entry.File];
        // The longest straight run along an axis at the deepest level, moved across it to either side: one of them goes into the part.
        var (cuts, lines) = (ProgramEdit.Cuts(text, operation), text.Split('\n'));
        var run = cuts.Where(m => m.Kind == MotionKind.Line && IsNearThePart(placed, m.From) && IsNearThePart(placed, m.To) && lines[m.Line - 1].Contains('Y', StringComparison.Ordinal)
            && Math.Abs(m.To.X - m.From.X) > 0.9 * Math.Abs(m.To.Y - m.From.Y)).MaxBy(m => m.Length - 100 * m.To.Z);
        var caught = new[] { 0.3, -0.3 }.Select(by => Stopping(setUp, entry, ProgramEdit.Moved(text, run.Line, 'Y', by).Text).Where(f => f.Code == "PROOF-01").ToList()).First(f => f.Count > 0);
        Assert.Contains(caught, f => Math.Abs(LineNamed(f, entry) - run.Line) <= 2 && Millimetres(f) is > 0.1 and < 0.4);
    }

    [Theory]
    [InlineData("body-back", Side.Back, Math.PI)]      // turned end for end
    [InlineData("body-back", Side.Front, 0)]           // not turned over at all
    [InlineData("neck-back", Side.Back, Math.PI)]
    [InlineData("neck-back", Side.Front, 0)]
    [InlineData("neck-front", Side.Back, 0)]           // the back taken for the front
    public void A_wrong_flip_is_caught(string setUp, Side up, double turn)
    {
        var part = setUp.Split('-')[0];
        var proof = Example.ProveAgain(part, s => s.Name == setUp ? s with { Placement = Turned(s, up, turn) } : s);
        var programs = Example.Made.SetUps.Single(s => s.Name == setUp).Programs;
        Assert.Contains(proof.Findings, f => f.Severity == Severity.Stops && f.Code == "PROOF-01" && Millimetres(f) > 1 && programs.Any(p => f.Place.Contains(p.File, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("body-back", 0.3, 0)]
    [InlineData("neck-back", 0, 0.3)]
    [InlineData("fretboard", 0.3, 0)]
    public void A_zero_off_by_three_tenths_is_caught_as_three_tenths(string setUp, double x, double y)
    {
        // The front's wood does not move along, so only what one set-up makes against another's is off; on a part of one set-up it is the blank.
        var part = setUp.Split('-')[0];
        var proof = Example.ProveAgain(part, s => s.Name == setUp ? s with { Placement = s.Placement with { Origin = new(s.Placement.Origin.X + x, s.Placement.Origin.Y + y, s.Placement.Origin.Z) } } : s);
        Assert.Contains(proof.Findings, f => f.Code == "PROOF-01" && Millimetres(f) is > 0.25 and < 0.4 && f.Place.Contains($"-{setUp}-", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("body-front", "neck pocket, walls", 1, "PROOF-01")]
    [InlineData("body-front", "neck pocket, walls", -1, "PROOF-02")]
    [InlineData("neck-back", "outline, finish", 0.5, "PROOF-01")]
    [InlineData("neck-back", "carved back", 1, "PROOF-01")]
    [InlineData("fretboard", "fret slots", 0.25, "PROOF-01")]
    public void The_wrong_cutter_is_caught(string setUp, string operation, double thicker, string code)
    {
        var (_, entry, _) = Example.ProgramWith(setUp, operation);
        var proof = Example.ProveAgain(setUp.Split('-')[0], s => s.Name != setUp ? s : s with
        {
            Programs = [.. s.Programs.Select(p => p == entry ? p with { Cutter = p.Cutter with { Diameter = p.Cutter.Diameter + thicker } } : p)],
        });
        Assert.Contains(proof.Findings, f => f.Severity == Severity.Stops && f.Code == code && f.Place.StartsWith(setUp.Replace("-", ", ", StringComparison.Ordinal), StringComparison.Ordinal)
            && (code == "PROOF-02" || f.Place.Contains(entry.File, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("body-front", "neck pocket", "G21", "G20", "PROOF-14")]
    [InlineData("fretboard", "fret slots", "G21", "G20", "PROOF-05")]
    [InlineData("neck-back", "carved back", " M3", "", "PROOF-08")]
    [InlineData("fretboard", "playing face", " M3", "", "PROOF-08")]
    public void A_wrong_word_at_the_start_is_caught(string setUp, string operation, string word, string instead, string code)
    {
        var (_, entry, _) = Example.ProgramWith(setUp, operation);
        var text = Example.Made.Texts[entry.File];
        var findings = Stopping(setUp, entry, ProgramEdit.Replaced(text, ProgramEdit.LineWith(text, word), word, instead).Text);
        Assert.Contains(findings, f => f.Code == code && f.Place.StartsWith($"{entry.File} line ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("body-front", "neck pickup, walls")]
    [InlineData("neck-front", "tuner holes, 6 of 10 mm")]
    public void An_arc_about_another_centre_is_refused_by_its_line(string setUp, string operation)
    {
        var (_, entry, _) = Example.ProgramWith(setUp, operation);
        var text = Example.Made.Texts[entry.File];
        var line = ProgramEdit.Cuts(text, operation).First(m => m.IsArc).Line;
        var findings = Stopping(setUp, entry, ProgramEdit.Replaced(text, line, " I", " I1").Text);
        Assert.Contains(findings, f => f.Code == "PROOF-14" && f.Place.StartsWith($"{entry.File} line {line} ", StringComparison.Ordinal));
    }

    private static ImmutableArray<Finding> Stopping(string setUp, ProgramEntry entry, string text)
    {
        var proof = Example.ProveAgain(setUp.Split('-')[0], null, Example.Made.Texts.SetItem(entry.File, text));
        return [.. proof.Findings.Where(f => f.Severity == Severity.Stops)];
    }

    /// <summary>Whether the tip is near enough to the part's plan to touch it.</summary>
    private static bool IsNearThePart(SetUp setUp, WorkPoint p) => Example.Worked.Design.Part(setUp.Part).Outline.SignedDistance(setUp.Placement.ToPart(p).Plan) < 7;

    /// <summary>The same dowel's place, the part lying another way about it.</summary>
    private static Placement Turned(SetUp setUp, Side up, double turn)
    {
        var middle = new PartPoint((setUp.Blank.X0 + setUp.Blank.X1) / 2, (setUp.Blank.Y0 + setUp.Blank.Y1) / 2, (setUp.Blank.Z0 + setUp.Blank.Z1) / 2);
        var was = setUp.Placement.ToWork(middle);
        var now = new Placement(up, setUp.Placement.Turn + turn, new(0, 0, 0));
        var at = now.ToWork(middle);
        return now with { Origin = new(was.X - at.X, was.Y - at.Y, was.Z - at.Z) };
    }

    private static double Millimetres(Finding f) => double.Parse(f.Figure.Split(' ')[0], CultureInfo.InvariantCulture);

    private static int LineNamed(Finding f, ProgramEntry entry) =>
        Regex.Match(f.Place, Regex.Escape(entry.File) + " line ([0-9]+)") is { Success: true } m ? int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) : -1;
}
