using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Files;

public class InstrumentFileTests
{
    const string Minimal = "units = \"mm\"\nname = \"plain\"\nscale = \"25 in\"\n";
    const string MinimalBass = "units = \"mm\"\nname = \"plain bass\"\nscale = \"34 in\"\n";

    static InstrumentDefinition Read(string text)
    {
        var result = InstrumentFile.Read(text, "plain.toml");
        Assert.Empty(result.Mistakes);
        return result.Good;
    }

    static string[] Mistakes(string text) => [.. InstrumentFile.Read(text, "plain.toml").Mistakes.Select(m => $"{m.Line},{m.Column}: {m.Wrong} | {m.Allowed} | {m.Remedy}")];

    /// <summary>The school's file spells out what three lines with the defaults filled in mean, and what strings are on it.</summary>
    [Fact]
    public void Three_lines_are_an_instrument()
    {
        var plain = Read(Minimal);
        var six = Read(Repository.ReadExample("school-six.toml"));

        Assert.Equal(Records.Text(six), Records.Text(plain with { Name = six.Name, Tuning = six.Tuning }));
    }

    /// <summary>The measures our own outline and headstock families are drawn with.</summary>
    [Fact]
    public void Six_strings_of_25_in_get_the_offset_familys_measures()
    {
        var plain = Read(Minimal);

        Assert.Equal((43.0, 35.5), (plain.Nut.Width, plain.Nut.StringSpread));
        Assert.Equal((52.5, 56.0), (plain.Body.Bridge.StringSpread, plain.Fretboard.WidthAtEnd));
        Assert.Equal((464.0, 44.0, 31.0), (plain.Body.Outline.BodyLength, plain.Body.Outline.LowerBoutSkew, plain.Body.Outline.TailOffset));
        Assert.Equal(new ShoulderDefinition.Horned(40, 11, 45, 13, 20.2, 7, 9.5), plain.Body.Outline.Treble);
        Assert.Equal(new ShoulderDefinition.Horned(84, 12, 55, 13, 19.2, 7, 10), plain.Body.Outline.Bass);
        Assert.Equal([("neck pickup", 494.0), ("bridge pickup", 597.0)], plain.Body.Pickups.Select(p => (p.Name, p.CentreX)));
        Assert.Equal((684.0, 98.0), (plain.Body.Controls!.CentreX, plain.Body.Controls.CentreY));
        Assert.Equal(-27 * Math.PI / 180, plain.Body.Controls.Angle, 15);
        Assert.Equal((3, 3, 36.0), (plain.Headstock.TunersBass, plain.Headstock.TunersTreble, plain.Headstock.TunerPitch));
        Assert.Equal([("neck pickup", "bridge pickup"), ("bridge pickup", "controls"), ("controls", "bridge")], plain.Body.WireWays.Select(w => (w.From, w.To)));
    }

    [Fact]
    public void A_scale_of_34_in_gets_the_bass_familys_measures()
    {
        var bass = Read(MinimalBass);

        Assert.Equal((4, 21, 42.0, 31.5, 57.0, 63.0), (bass.Strings, bass.Frets, bass.Nut.Width, bass.Nut.StringSpread, bass.Body.Bridge.StringSpread, bass.Fretboard.WidthAtEnd));
        Assert.Equal((506.0, 92.0), (bass.Body.Outline.BodyLength, bass.Neck.Heel.Length));
        Assert.Equal(new ShoulderDefinition.Horned(102, 13, 57, 14, 18.4, 7, 10), bass.Body.Outline.Bass);
        Assert.Equal([716.0, 790.0], bass.Body.Pickups.Select(p => p.CentreX));
        Assert.Equal(822, bass.Body.Controls!.CentreX, 1);
        Assert.Equal((2, 2, 52.0), (bass.Headstock.TunersBass, bass.Headstock.TunersTreble, bass.Headstock.TunerPitch));
        Assert.Null(bass.Body.Bridge.StringThroughAt);
    }

    [Fact]
    public void Rooms_can_be_left_out()
    {
        var bare = Read(Minimal + "[body]\npickups = []\n[body.controls]\nfitted = false\n[body.jack]\nfitted = false\n[body.bridge]\nstring_through = false");

        Assert.Empty(bare.Body.Pickups);
        Assert.Empty(bare.Body.WireWays);
        Assert.Equal((null, null, null), (bare.Body.Controls, bare.Body.Jack, bare.Body.Bridge.StringThroughAt));
    }

    [Fact]
    public void A_side_may_change_its_kind() =>
        Assert.IsType<ShoulderDefinition.Rounded>(Read(Minimal + "[body.outline.bass]\nkind = \"rounded\"\nmeet = 20").Body.Outline.Bass);

    public static TheoryData<string, string> EachMistake => new()
    {   // added to the minimal file; the one mistake
        { "string = 6", "4,1: unknown key `string` at the top level | units, name, hand, scale, scale_bass, scale_treble, perpendicular_fret, strings, frets, woods, nut, fretboard, neck, headstock, body, action, weights, hanging, buying, seasons, tuning, override | did you mean `strings`?" },
        { "hand = \"lefty\"", "4,8: `hand` is \"lefty\" | right or left | did you mean \"left\"?" },
        { "strings = 12", "4,11: `strings` is 12 | 4 to 9 | give a whole number from 4 to 9" },
        { "[nut]\nwidth = 430", "5,9: `nut.width` is 430 | 25 mm to 120 mm | give a length within 25 mm to 120 mm" },
        { "scale_bass = 660\nscale_treble = 635", "3,9: the scale of 635 mm is not the middle of the two beside it | 647.5 mm | leave `scale` out: it follows from the other two" },
        { "scale_bass = 620\nscale_treble = 650", "5,16: the highest string's scale of 650 mm is longer than the lowest's | at most 620 mm | exchange the two" },
        { "scale_bass = 660", "1,1: `scale_treble` is missing | 500 mm to 950 mm | give it at the top of the file, before the first table" },
        { "[nut]\nwidth = 43\nedge_distance = 3", "6,17: the board at the nut has a width and an edge distance | one of the two | give one: the other follows" },
        { "[fretboard]\nwidth_at_end = 56\nedge_at_last_fret = 3", "6,21: the board has a width at its end and an edge at the last fret | one of the two | give one: the other follows" },
        { "[body.bridge]\nspread_least = 60\nspread_most = 50", "5,16: the narrowest spread, 60 mm, is wider than the widest | at most 50 mm | exchange the two" },
        { "[nut]\nwidth = 35", "5,9: the nut is 35 mm wide, its strings spread over 35.5 mm | at least 39.5 mm | widen the nut or bring the strings together: 2 mm must stay outside each outer string" },
        { "[headstock]\ntuners_bass = 6\ntuners_treble = 6", "5,15: 6 and 6 tuners for 6 strings | 6 together | give each string one tuner" },
        { "[fretboard.dots]\nfrets = [3, 24]", "5,13: `fretboard.dots.frets` is 24 | 1 to 22 | give a whole number from 1 to 22" },
        { "[body.bridge]\nstrings_held = \"tailpiece\"\nstring_through = true", "5,16: the strings are held otherwise than `string_through = true` says | through-body | change one of the two" },
        { "[body.pocket]\ndepth = 15\n[action]\nsolve = \"depth\"", "5,9: `body.pocket.depth` is given, and `action.solve` says it follows from the others | one of the two | remove it here, or solve for another measure" },
        { "[neck.heel]\nthickness = 19\n[action]\nsolve = \"heel\"", "5,13: `neck.heel.thickness` is given, and `action.solve` says it follows from the others | one of the two | remove it here, or solve for another measure" },
        { "[fretboard.dots]\ndoubles = [13]", "5,11: fret 13 has two dots but is not among `frets` | frets out of 3, 5, 7, 9, 12, 15, 17, 19, 21 | add it to `frets` or remove it here" },
        { "[[body.wire_ways]]\nfrom = \"neck pickup\"\nto = \"the moon\"", "6,6: `to` of [[body.wire_ways]] 1 is \"the moon\" | neck pickup, bridge pickup, neck pocket, controls or bridge | use one of the words allowed" },
        { "[[body.wire_ways]]\nfrom = \"controls\"\nto = \"controls\"", "6,6: the wire way goes from \"controls\" to itself | two different rooms | name the other room" },
        { "[body.outline]\nfamily = \"bas\"", "5,10: `body.outline.family` is \"bas\" | symmetric, offset, single, bass or travel | did you mean \"bass\"?" },
        { "[body.outline.bass]\nmeet = 20", "5,1: unknown key `meet` in [body.outline.bass] | kind, horn_reach, horn_tip_radius, cutaway_width, cutaway_radius, cutaway_fret, shoulder_corner_radius, shoulder_margin | remove it, or use one of the keys allowed here" },
    };

    [Theory, MemberData(nameof(EachMistake))]
    public void Each_mistake_is_told_with_its_place(string added, string mistake) => Assert.Equal([mistake], Mistakes(Minimal + added));

    [Fact]
    public void Two_pickups_of_one_name_are_a_mistake() =>
        Assert.StartsWith("4,1: two pickups are called \"p\"", Mistakes(Minimal + "[[body.pickups]]\nname = \"p\"\ncentre = 500\n[[body.pickups]]\nname = \"p\"\ncentre = 590").Single(), StringComparison.Ordinal);

    [Fact]
    public void An_empty_file_names_what_must_be_given() =>
        Assert.Equal(["`name` is missing", "`scale` is missing", "`units` is missing"], InstrumentFile.Read("", "empty.toml").Mistakes.Select(m => m.Wrong).Order());
}
