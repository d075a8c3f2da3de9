using Solidbody.Geometry;
using Solidbody.Findings;

namespace Solidbody.Programs.Tests;

/// <summary>What the reader takes and how it obeys it. Unless a row says otherwise the source is NISTIR 6556, from memory.</summary>
public class ProgramReaderTests
{
    /// <summary>Modes, a rise, a travel to X0 Y0 at Z0, feed 600 mm/min.</summary>
    private const string Opening = "G21 G17 G90 G94\nG0 Z0\nG0 X0 Y0\nF600\n";
    private const int FirstLine = 5;

    private static ReadProgram Good(string body) => ProgramReader.Read(Opening + body + "\nM2\n", "t.nc") switch
    {
        { IsGood: true } good => good.Good,
        var bad => throw new Xunit.Sdk.XunitException(string.Join('\n', bad.Mistakes)),
    };

    private static Mistake Only(string text)
    {
        var result = ProgramReader.Read(text, "t.nc");
        Assert.Null(result.Value);
        return Assert.Single(result.Mistakes);
    }

    private static Mistake OnlyIn(string body) => Only(Opening + body + "\nM2\n");

    [Theory] // NISTIR 6556 section 3.5.3.2: radii may differ by 0.002 mm. The three ends are worked from the rule.
    [InlineData("10", true)]
    [InlineData("10.0015", true)]
    [InlineData("10.002", true)]
    [InlineData("10.003", false)]
    [InlineData("9.997", false)]
    public void An_arc_whose_radii_differ_by_more_than_2_micrometres_is_refused(string end, bool passes)
    {
        foreach (var word in new[] { "G2", "G3" })
            Assert.Equal(passes, ProgramReader.Read($"{Opening}{word} X{end} Y0 I5 J0\nM2", "t.nc").IsGood);
    }

    [Theory] // The same rule in inches: 0.0002 in.
    [InlineData("1.0001", true)]
    [InlineData("1.0002", true)]
    [InlineData("1.0003", false)]
    public void In_inches_the_radii_may_differ_by_two_tenthousandths(string end, bool passes) =>
        Assert.Equal(passes, ProgramReader.Read($"{Opening}G20\nG2 X{end} Y0 I0.5 J0\nM2", "t.nc").IsGood);

    [Theory] // Section 3.5.3.1, numbers from plane geometry: the chord 10 is a quarter turn's of radius √50.
    [InlineData("G2 X10 Y0 R5", 5, 0, -Math.PI)]
    [InlineData("G3 X10 Y0 R5", 5, 0, Math.PI)]
    [InlineData("G2 X10 Y0 R7.071067812", 5, -5, -Math.PI / 2)]
    [InlineData("G3 X10 Y0 R7.071067812", 5, 5, Math.PI / 2)]
    [InlineData("G2 X10 Y0 R-7.071067812", 5, 5, -3 * Math.PI / 2)]
    [InlineData("G3 X10 Y0 R-7.071067812", 5, -5, 3 * Math.PI / 2)]
    public void The_radius_form_finds_its_centre(string words, double x, double y, double sweep)
    {
        var arc = Assert.Single(Good(words).Motions);
        // 7.071067812 stands for √50 to 5e-10, and the centre moves by R/h = √2 times that; at R5 the root loses half the digits.
        Assert.Equal(x, arc.Centre.X, 1e-8);
        Assert.Equal(y, arc.Centre.Y, 1e-8);
        Assert.Equal(sweep, arc.Sweep, 1e-8);
    }

    [Fact] // Worked from the quarter turn above: the top of the arc lies R − 5 above the chord.
    public void The_radius_form_clockwise_bulges_to_the_left_of_its_way()
    {
        var arc = Good("G2 X10 Y0 R7.071067812").Motions[0];
        var top = arc.Centre + (arc.From.Plan - arc.Centre).Turned(arc.Sweep / 2);
        Assert.Equal(5, top.X, 1e-8);
        Assert.Equal(2.071067812, top.Y, 1e-8);
    }

    [Fact]
    public void An_arc_that_ends_where_it_begins_is_a_whole_turn_and_may_climb()
    {
        var arc = Good("G3 X0 I5 Z-2").Motions[0];
        Assert.Equal(2 * Math.PI, arc.Sweep, 1e-12);
        Assert.Equal(Math.Sqrt(100 * Math.PI * Math.PI + 4), arc.Length, 1e-9);
    }

    [Theory] // Table 8: the order of execution on one line. Each line would give another figure in another order.
    [InlineData("F1200 G1 X1", 20, 0)]            // 3 F before 20 motion
    [InlineData("G1 X1 F1200", 20, 0)]            // however it is written
    [InlineData("S6000 G1 X1 M3", 10, 100)]       // 4 S, then 7 M3, then motion
    [InlineData("M3 G1 X1 S6000", 10, 100)]
    [InlineData("F1 G20 G1 X1", 1 / 60.0, 0)]     // 3 F in the old unit, millimetres, before 12 G20
    public void Words_of_a_line_are_obeyed_in_the_order_of_table_8(string line, double feed, double speed)
    {
        var motion = Good(line).Motions[0];
        Assert.Equal(feed, motion.Feed, 1e-12);
        Assert.Equal(speed, motion.SpindleSpeed, 1e-12);
    }

    [Fact] // Table 8: 12 units and 17 distance mode come before 20 motion; 7 M5 too; 21 M2 comes after it.
    public void Units_distance_and_the_spindles_stop_come_before_the_motion_of_their_line_and_the_end_after_it()
    {
        var program = ProgramReader.Read("G21 G90 G94\nG0 Z10\nX1 Y1\nS60 M3\nX2\nM5 X3\nG20 X1\nG91 X1\nG0 X1 M2", "t.nc").Good;
        double[] ends = [2, 3, 25.4, 50.8, 76.2];
        Assert.All(program.Motions, (m, i) => Assert.Equal(ends[i], m.To.X, 1e-12));
        Assert.Equal([1.0, 0, 0, 0, 0], program.Motions.Select(m => m.SpindleSpeed));
        Assert.Equal([5, 6, 7, 8, 9], program.Motions.Select(m => m.Line));
    }

    [Fact]
    public void The_start_tells_the_lowest_rise_and_the_first_known_place()
    {
        var program = ProgramReader.Read("(one)\nG21 G90\nG0 Z-3\nZ30 ; two\nX4 Y5\nZ2\nM30\n", "t.nc").Good;
        Assert.Equal(new ProgramStart(-3, 3, new(4, 5, 30), 5), program.Start);
        var drop = Assert.Single(program.Motions);
        Assert.Equal(new WorkPoint(4, 5, 30), drop.From);
        Assert.Equal(["one", "two"], program.Comments);
        Assert.Equal(7, program.Lines);
    }

    [Fact]
    public void Blanks_and_case_mean_nothing_and_numbers_nearly_whole_are_whole() // sections 3.3.1 and 3.3.2
    {
        var motion = Good("n5 g 1.00005 x +0. 12 34 y 7").Motions[0];
        Assert.Equal(new WorkPoint(0.1234, 7, 0), motion.To);
        Assert.Equal(MotionKind.Line, motion.Kind);
    }

    [Theory] // Sections 3.3.2.1 and .4 and the IEEE reading of the same digits.
    [InlineData("X.5", 0.5)]
    [InlineData("X-.125", -0.125)]
    [InlineData("X5.", 5)]
    [InlineData("X+00012.500", 12.5)]
    [InlineData("X0.1000000000000000055511151231257827", 0.1)]
    [InlineData("X-123.45600000000000001", -123.456)]
    [InlineData("X999999.9999999999", 999999.9999999999)]
    public void Numbers_are_read_to_the_last_bit(string word, double value) => Assert.Equal(value, Good("G1 " + word).Motions[0].To.X);

    public static TheoryData<string, int, string> Refused => new()
    {   // words, column, a part of the message
        { "G1 X1 X2", 7, "X stands twice" },
        { "G0 G1 X1", 4, "same modal group" },                 // table 4, group 1
        { "G80 G0 X1", 5, "same modal group" },
        { "G17 G17", 5, "same modal group" },                  // group 2
        { "G90 G91", 5, "same modal group" },                  // group 3
        { "G20 G21", 5, "same modal group" },                  // group 6
        { "M0 M1", 4, "same modal group" },                    // M group 4
        { "S1 M3 M5", 7, "same modal group" },                 // M group 7
        { "G18", 1, "XY plane" },
        { "G41", 1, "radius is already in the path" },
        { "G43 H1", 1, "after the first travel" },
        { "G43", 1, "G43 without H" },
        { "H1", 1, "H without G43" },
        { "G43 H1.5", 5, "not a cutter's number" },
        { "G55", 1, "one zero" },
        { "G59.1", 1, "one zero" },
        { "G84 X1 Y1 Z-1 R1", 1, "only drilling" },
        { "G73 X1 Y1 Z-1 R1 Q1", 1, "not a word" },
        { "G38.2 Z-1", 1, "only drilling" },
        { "G81 X1 Y1 Z-1 R1", 5, "return mode" },
        { "G98 G81 X1 Y1 R1", 9, "G81 without Z" },
        { "G98 G81 X1 Y1 Z-1", 9, "G81 without R" },
        { "G98 G81 Z1 R0 X1", 9, "above R" },
        { "G98 G82 X1 Z-1 R1", 9, "G82 without P" },
        { "G98 G83 X1 Z-1 R1", 9, "G83 without Q" },
        { "G98 G83 X1 Z-1 R1 Q0", 9, "a bite of 0 mm" },
        { "G98 G83 X1 Z-1 R1 Q0.001", 9, "a bite of 0.001 mm" },
        { "G98 G81 R1 Z-1 X1 L0", 19, "L is 0" },
        { "G98 G81 R1 Z-1 X1 L1.5", 19, "L is 1.5" },
        { "G98 G81", 5, "without X, Y or Z" },
        { "G98 G81 X1 Z-1 R1 Q1", 19, "Q without G83" },
        { "G98 G99", 5, "same modal group" },                  // group 10
        { "G1 X1 L2", 7, "L without a cycle" },
        { "M7 M8", 4, "same modal group" },
        { "G92 X0", 1, "move the zero" },
        { "G28", 1, "does not know" },
        { "G93", 1, "a minute only" },
        { "G64", 1, "lack it" },
        { "G5", 1, "not a word" },
        { "G1.5 X1", 1, "not a word" },
        { "M4", 1, "clockwise" },
        { "M99", 1, "not a word" },
        { "M3.5", 1, "not a word" },
        { "G1", 1, "without X, Y or Z" },
        { "G0 F5", 1, "without X, Y or Z" },
        { "G1 A5 X1", 4, "unknown word A5" },
        { "U3", 1, "unknown word U3" },
        { "G2 X10 I5 K0", 11, "unknown word K0" },
        { "G1 X", 4, "X has no number" },
        { "G1 X- Y1", 4, "X has no number" },
        { "G1 X1e3", 6, "exponent" },
        { "G1 XNaN", 4, "X has no number" },
        { "G1 X1000001", 4, "X is 1000001" },
        { "G1 X1" + "000000000000000000000000000000000000000000000000000000", 4, "X is 1E+54" },
        { "G1 X1.2.3", 8, "'.' stands where a word should begin" },
        { "G1 X#5", 5, "parameter" },
        { "#5=3", 1, "parameter" },
        { "G1 X[1+2]", 5, "expression" },
        { "/G1 X1", 1, "'/'" },
        { "%", 1, "'%'" },
        { "G1 X1 (open", 7, "not closed" },
        { "(a (b) c)", 4, "another '('" },
        { "G1 X1 )", 7, "closes no comment" },
        { "(Größe)", 4, "U+00F6" },
        { "G1 X1 \u0001", 7, "U+0001" },
        { "G1 X1\u00a0Y2", 6, "U+00A0" },
        { "N-1 G1 X1", 1, "not a line number" },
        { "N1.5 G1 X1", 1, "not a line number" },
        { "N100000 G1 X1", 1, "not a line number" },
        { "G1 N5 X1", 4, "not a line number" },
        { "T1.5", 1, "not a tool's number" },
        { "S-5", 1, "S is -5" },
        { "F0", 1, "F is 0" },
        { "G4", 1, "G4 without P" },
        { "P3", 1, "P without G4" },
        { "G98 G81 X1 Z-1 R1 P1", 19, "P without G4" },
        { "G4 P-1", 4, "P is -1" },
        { "M3", 1, "without a speed" },
        { "M6", 1, "M6" },
        { "G1 X1 I5", 7, "I without an arc" },
        { "R5", 1, "R without an arc" },
        { "G2 X10 Y0", 4, "without a centre" },
        { "G2 X10 Y0 I5 R5", 14, "both R and I or J" },
        { "G2 Z5 I5", 4, "without X and Y" },
        { "G2 X0 Y0 R5", 10, "ends where it begins" },
        { "G2 X10 Y0 R4.9", 11, "does not reach" },
        { "G2 X10 Y0 I0 J0", 11, "centre is its start" },
        { "G80 X1", 5, "while G80 holds" },
    };

    [Theory, MemberData(nameof(Refused))]
    public void What_is_not_explicitly_allowed_is_refused_at_its_place(string words, int column, string says)
    {
        var result = ProgramReader.Read($"{Opening}{words}\nM2\n", "t.nc");
        Assert.Null(result.Value);
        var mistake = result.Mistakes[0];
        Assert.Equal(("t.nc", FirstLine, column), (mistake.File, mistake.Line, mistake.Column));
        Assert.Contains(says, mistake.Wrong, StringComparison.Ordinal);
        Assert.NotEmpty(mistake.Allowed);
        Assert.NotEmpty(mistake.Remedy);
    }

    [Theory] // Nothing is taken for granted at the start.
    [InlineData("G90\nG0 Z5\nX1 Y1\nM2", 2, "units")]
    [InlineData("G21\nG0 Z5\nX1 Y1\nM2", 2, "distance mode")]
    [InlineData("G21 G90\nZ5\nX1 Y1\nM2", 2, "before any of G0")]
    [InlineData("G21 G90\nG0 X1 Y1\nM2", 2, "not straight up")]
    [InlineData("G21 G90\nG0 Z5\nX1\nY1\nM2", 3, "not a travel")]
    [InlineData("G21 G90\nG0 Z5\nX1 Y1 Z3\nM2", 3, "not a travel")]
    [InlineData("G21 G90 G94\nF60\nG0 Z5\nG1 X1 Y1\nM2", 4, "not a travel")]
    [InlineData("G21 G91\nG0 Z5\nX1 Y1\nM2", 2, "not straight up")]
    [InlineData("G21 G90\nG0 Z5\nX1 Y1\nG1 X2 F60\nM2", 4, "feed mode")]
    [InlineData("G21 G90 G94\nG0 Z5\nX1 Y1\nG1 X2\nM2", 4, "without a feed")]
    [InlineData("G21 G90 G94\nF60\nG0 Z5\nX1 Y1\nG2 X2 I0.5\nM2", 5, "plane")]
    [InlineData("F600 G21\nM2", 1, "F stands before the units")] // table 8: F is obeyed before G21
    public void State_at_the_start_is_unknown(string text, int line, string says)
    {
        var mistake = Only(text);
        Assert.Equal(line, mistake.Line);
        Assert.Contains(says, mistake.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fetched_cutter_makes_the_height_unknown_again()
    {
        Assert.Contains("straight up", Only("G21 G90\nG0 Z5\nT1 M6\nG0 X1 Y1\nM2").Wrong, StringComparison.Ordinal);
        var program = ProgramReader.Read("G21 G90\nG0 Z5\nT12 M6\nG0 Z6\nX1 Y1\nM2", "t.nc").Good;
        Assert.Equal(12, program.Tool);
        Assert.Equal(6, program.Start!.At.Z);
        Assert.Contains("first travel", OnlyIn("T1 M6").Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void The_end_is_needed_and_nothing_follows_it()
    {
        Assert.Contains("no end", Only("G21 G90").Wrong, StringComparison.Ordinal);
        Assert.Contains("no end", Only("").Wrong, StringComparison.Ordinal);
        Assert.Contains("after the end", Only("M2\nG0 X1").Wrong, StringComparison.Ordinal);
        Assert.True(ProgramReader.Read("M30\r\n \t\r\n", "t.nc").IsGood);
    }

    [Fact] // Section 3.3.1: 256 characters.
    public void A_line_is_at_most_256_characters()
    {
        Assert.True(ProgramReader.Read($"({new string('a', 254)})\nM2", "t.nc").IsGood);
        Assert.Contains("257 characters", Only($"({new string('a', 255)})\nM2").Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_mistake_is_told_at_once_up_to_a_hundred()
    {
        var result = ProgramReader.Read($"{Opening}G1 X1 Q5\nG2 X1\nG18\nM2", "t.nc");
        Assert.Equal([(5, 7), (6, 4), (7, 1)], result.Mistakes.Select(m => (m.Line, m.Column)));
        Assert.Equal(100, ProgramReader.Read(string.Concat(Enumerable.Repeat("G18\n", 5000)), "t.nc").Mistakes.Length);
    }

    [Fact]
    public void A_standing_spindle_is_read_and_recorded() => Assert.Equal(0, Good("G1 X1").Motions[0].SpindleSpeed);

    [Fact]
    public void Inches_are_read_as_millimetres()
    {
        var program = ProgramReader.Read("G20 G17 G90 G94\nF60\nG0 Z1\nX1 Y2\nG3 X2 I0.5 J0\nM2", "t.nc").Good;
        var arc = Assert.Single(program.Motions);
        Assert.Equal(new Point2(1.5 * 25.4, 50.8), arc.Centre);
        Assert.Equal(25.4, arc.Feed, 1e-12);
    }
}
