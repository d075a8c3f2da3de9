using System.Globalization;
using Solidbody.Geometry;

namespace Solidbody.Programs.Tests;

/// <summary>The text itself, and what the writer refuses.</summary>
public class ProgramWriterTests
{
    private static readonly ProgramHeader Header = new("body", "1, Body, front up: pocket", "six, up-spiral, diameter 6 mm", "X0 Y0 first dowel, Z0 spoilboard", "Look first.");

    private static ProgramDraft Draft(params Motion[] motions) => new()
    {
        Header = Header,
        ClearanceHeight = 60,
        SpindleSpeed = 300,
        Sections = [new("Pocket (rough), ⌀6", motions)],
    };

    private static Motion Rapid(WorkPoint from, WorkPoint to) => new(MotionKind.Rapid, from, to, default, 0);
    private static Motion Line(WorkPoint from, WorkPoint to, double feed = 20) => new(MotionKind.Line, from, to, default, feed);

    /// <summary>A square with one round corner and a bore, from clearance to clearance.</summary>
    private static readonly Motion[] Pocket =
    [
        Rapid(new(10, 20, 60), new(10, 20, 46)),
        Line(new(10, 20, 46), new(10, 20, 40), 5),
        Line(new(10, 20, 40), new(40, 20, 40)),
        new(MotionKind.ArcCounterClockwise, new(40, 20, 40), new(50, 30, 40), new(40, 30), 20),
        new(MotionKind.ArcClockwise, new(50, 30, 40), new(50, 30, 38), new(45, 30), 10),
        Rapid(new(50, 30, 38), new(50, 30, 60)),
    ];

    [Fact]
    public void A_whole_program_reads_as_a_person_expects() => Assert.Equal("""
        (Part: body)
        (Set-up: 1, Body, front up: pocket)
        (Cutter: six, up-spiral, diameter 6 mm)
        (Zero: X0 Y0 first dowel, Z0 spoilboard)
        (Caution: Look first.)
        G17 G21 G40 G49 G54 G80 G90 G94
        G0 Z60
        S18000 M3
        G4 P3
        (Pocket [rough], dia. 6)
        X10 Y20
        Z46
        G1 Z40 F300
        X40 F1200
        G3 X50 Y30 I0 J10
        G2 X40 Z39 I-5 J0 F600
        X50 Z38 I5 J0
        G0 Z60
        M5
        M2

        """, ProgramWriter.Write(Draft(Pocket), new()));

    [Fact]
    public void A_changer_an_inch_machine_and_line_numbers_change_words_not_places() => Assert.Equal("""
        N1 G17 G20 G40 G49 G54 G80 G90 G94
        N2 G0 Z2.3622
        N3 T7 M6
        N4 Z2.3622
        N5 S18000 M3
        N6 G4 P3
        N7 X0.3937 Y0.7874
        N8 Z1.811
        N9 G1 Z1.5748 F11.81
        N10 X1.5748 F47.24
        N11 G0 Z2.3622
        N12 M5
        N13 M2

        """, ProgramWriter.Write(Draft(Pocket[..3]), new() { Inches = true, LineNumbers = true, Comments = false, ToolNumber = 7 }));

    [Fact]
    public void A_rapid_that_goes_both_ways_takes_the_higher_road()
    {
        var text = ProgramWriter.Write(Draft(Rapid(new(0, 0, 60), new(5, 5, 50)), Rapid(new(5, 5, 50), new(9, 9, 55))), new() { Comments = false });
        Assert.Contains("X5 Y5\nZ50\nZ55\nX9 Y9\nZ60\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Moves_shorter_than_the_grid_are_left_out_and_do_not_add_up()
    {
        var motions = new List<Motion>();
        for (var i = 0; i < 1000; i++) motions.Add(Line(new(i * 0.0004, 0, 60), new((i + 1) * 0.0004, 0, 60)));
        var read = ProgramReader.Read(ProgramWriter.Write(Draft([.. motions]), new()), "t.nc").Good;
        Assert.Equal(0.4, read.Motions[^1].To.X, 1e-12);
        Assert.Equal(400, read.Motions.Length);
    }

    [Fact] // A rounding that could turn a tiny arc into a whole turn: the way must stay tiny.
    public void A_tiny_arc_never_becomes_a_whole_turn()
    {
        for (var i = 1; i < 2000; i++)
        {
            var (centre, from) = (new Point2(0.0003 * i, 0.7), new Point2(0.0003 * i + 5, 0.7));
            var end = centre + new Point2(5, 0).Turned(1e-6 * i);
            var arc = new Motion(MotionKind.ArcCounterClockwise, new(from.X, from.Y, 60), new(end.X, end.Y, 60), centre, 20);
            Assert.All(ProgramReader.Read(ProgramWriter.Write(Draft(arc), new()), "t.nc").Good.Motions, m => Assert.InRange(m.Length, 0, 0.02));
        }
    }

    [Fact] // s = R (1 − cos(θ/2)) ≤ 0.005 mm gives θ; a quarter turn of R 10 needs ⌈(π/2) / 0.063249…⌉ = 25 chords.
    public void Without_arcs_the_chords_are_as_few_as_the_flattening_allows()
    {
        var arc = new Motion(MotionKind.ArcCounterClockwise, new(10, 0, 60), new(0, 10, 60), new(0, 0), 20);
        var read = ProgramReader.Read(ProgramWriter.Write(Draft(arc), new() { Arcs = false }), "t.nc").Good;
        Assert.Equal(25, read.Motions.Length);
    }

    public static TheoryData<string, string> CommentTexts => new()
    {
        { "up-spiral ⌀6 × 22 (new) 118°", "up-spiral dia. 6 x 22 [new] 118 deg" },
        { "Möbel – ±0,1 ½", "Mobel - +/-0,1  1/2" },
        { "50 % off; go!", "50  per cent off, go." },
        { "日本\u0007", "___" },
        { "Ærø", "Aerdia. " },
    };

    [Theory, MemberData(nameof(CommentTexts))]
    public void Comments_are_made_plain(string text, string plain) => Assert.Equal(plain, CommentText.Safe(text));

    [Fact]
    public void Comments_of_any_text_are_read_back() => CsCheck.Check.Sample(CsCheck.Gen.String, title =>
    {
        var draft = Draft(Pocket) with { Header = Header with { Part = title }, Sections = [new(title, Pocket)] };
        Assert.True(ProgramReader.Read(ProgramWriter.Write(draft, new()), "t.nc").IsGood);
    }, iter: 500);

    public static TheoryData<Motion[], string> Refused => new()
    {
        { [Line(new(0, 0, 60), new(1, 0, 60)), Line(new(1.00001, 0, 60), new(2, 0, 60))], "join within" },
        { [Line(new(0, 0, 59), new(1, 0, 60))], "begins at clearance" },
        { [Line(new(0, 0, 60), new(double.NaN, 0, 60))], "finite" },
        { [Line(new(0, 0, 60), new(double.PositiveInfinity, 0, 60))], "finite" },
        { [Line(new(0, 0, 60), new(10_000, 0, 60))], "finite" },
        { [Line(new(0, 0, 60), new(1, 0, 60), 0)], "feed" },
        { [Line(new(0, 0, 60), new(1, 0, 60), double.NaN)], "feed" },
        { [Line(new(0, 0, 60), new(1, 0, 60), 1e6)], "feed" },
        { [new(MotionKind.ArcClockwise, new(0, 0, 60), new(10, 0, 60), new(4.9, 0), 20)], "radii" },
        { [new(MotionKind.ArcClockwise, new(0, 0, 60), new(0, 0, 60), new(0, 0), 20)], "radii" },
        { [new(MotionKind.ArcClockwise, new(0, 0, 60), new(1, 0, 60), new(double.NaN, 0), 20)], "radii" },
    };

    [Theory, MemberData(nameof(Refused))]
    public void A_list_that_cannot_be_a_program_is_refused(Motion[] motions, string says)
    {
        var thrown = Assert.ThrowsAny<ArgumentException>(() => ProgramWriter.Write(Draft(motions), new()));
        Assert.Contains(says, thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Habits_outside_their_range_are_refused()
    {
        ProgramStyle[] styles = [new() { Decimals = 1 }, new() { Decimals = 5 }, new() { ToolNumber = -1 }, new() { LeastArcRadius = 0.001 }, new() { MostArcRadius = 10_000 }, new() { SpindleDwellSeconds = 0 }];
        Assert.All(styles, s => Assert.Throws<ArgumentOutOfRangeException>(() => ProgramWriter.Write(Draft(Pocket), s)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProgramWriter.Write(Draft(Pocket) with { SpindleSpeed = 0 }, new()));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProgramWriter.Write(Draft(Pocket) with { ClearanceHeight = double.NaN }, new()));
    }

    [Fact]
    public void The_header_says_the_cutter_with_all_its_measures()
    {
        var setUp = Packets.Example.SetUps[0];
        Assert.Equal(new ProgramHeader("body", "1, body-front: holes", "drill 6, drill, diameter 6 mm, 2 flutes 50 mm long, stick-out 60 mm, point angle 118 degrees", setUp.Zero, ProgramHeader.UsualCaution),
            ProgramHeader.Of(setUp, setUp.Programs[0].Cutter, "holes"));
        var tapered = new Cutter { Name = "fine", Kind = CutterKind.TaperedBallEnd, Diameter = 6, FluteLength = 20, OverallLength = 60, ShankDiameter = 6, Flutes = 1, StickOut = 40, Angle = 5.5 * Math.PI / 180, TipRadius = 0.5 };
        Assert.Equal("fine, tapered ball-end, diameter 6 mm, 1 flute 20 mm long, stick-out 40 mm, tip radius 0.5 mm, half angle 5.5 degrees", ProgramHeader.Of(setUp, tapered, "x").Cutter);
    }

    [Fact]
    public void Writing_does_not_depend_on_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var plain = ProgramWriter.Write(Draft(Pocket), new() { Inches = true });
        var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NegativeSign = "~";
        try
        {
            CultureInfo.CurrentCulture = commas;
            Assert.Equal(plain, ProgramWriter.Write(Draft(Pocket), new() { Inches = true }));
        }
        finally { CultureInfo.CurrentCulture = before; }
    }
}
