using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Files;

public class TuningFileTests
{
    const string Top = "units = \"in\"\nname = \"four\"\nscale = 34\n";
    const string Plain = "[[tuning.strings]]\nnote = \"E4\"\ngauge = 0.010\n";
    const string Wound = "[[tuning.strings]]\nnote = \"E2\"\ngauge = 0.046\nwound = true\n";

    static string Four(string one) => Top + one + Plain + Plain + Plain;
    static string[] Mistakes(string text) => [.. InstrumentFile.Read(text, "four.toml").Mistakes.Select(m => $"{m.Line},{m.Column}: {m.Wrong} | {m.Allowed} | {m.Remedy}")];

    [Fact]
    public void Strings_are_read_in_any_unit()
    {
        var result = InstrumentFile.Read(Top + "[tuning]\na4 = 442\n" + Wound + "unit_mass = \"6.8 g/m\"\ncore = \"0.4 mm\"\n" + Wound + "unit_mass = \"0.0068 kg/m\"\n" + Plain
            + "[[tuning.strings]]\nnote = \"Bb4\"\ngauge = \"0.254 mm\"\n[[tuning.also]]\nname = \"low\"\nnotes = \"D2 D2  C4 F#3\"\n", "four.toml");
        Assert.Empty(result.Mistakes);
        var t = result.Good.Tuning!;
        Assert.Equal(442, t.A4);
        Assert.Equal([new(new(40), 1.1684, 0.0068, 0.4), new(new(40), 1.1684, 0.0068), new(new(64), 0.254), new(new(70), 0.254)], t.Strings);
        Assert.Equal("low", t.Also.Single().Name);
        Assert.Equal([38, 38, 60, 54], t.Also.Single().Notes.Select(n => n.Number));
    }

    [Fact]
    public void Without_strings_there_is_no_tuning() => Assert.Null(InstrumentFile.Read(Top + "[tuning]\na4 = 442\n", "four.toml").Good.Tuning);

    public static TheoryData<string, string> EachMistake => new()
    {
        { Top + "[tuning]\na4 = 600", "5,6: `tuning.a4` is 600 | 400 Hz to 480 Hz | give a frequency within 400 Hz to 480 Hz" },
        { Top + "[tuning]\na4 = \"440 MHz\"", "5,6: `tuning.a4` is \"440 MHz\", not a frequency this file can hold | 400 Hz to 480 Hz | give it in Hz" },
        { Top + Plain, "4,1: 1 strings are described, the instrument has 4 | 4 [[tuning.strings]], from the lowest | describe every string, or none" },
        { Four("[[tuning.strings]]\nnote = \"e2\"\ngauge = 0.046\n"), $"5,8: `note` of [[tuning.strings]] 1 is \"e2\" | {NoteName.Form} | write the letter large and the octave behind it: E2" },
        { Four("[[tuning.strings]]\nnote = 40\ngauge = 0.046\n"), $"5,8: `note` of [[tuning.strings]] 1 is 40, a whole number | {NoteName.Form} | write it in quotes" },
        { Four("[[tuning.strings]]\ngauge = 0.046\n"), $"4,1: `note` of [[tuning.strings]] 1 is missing | {NoteName.Form} | add it under [[tuning.strings]]" },
        { Four(Wound), "4,1: a wound string's `unit_mass` is missing | 0.2 g/m to 120 g/m, in g/m, kg/m or lb/in | take the maker's figure, or weigh a metre of the string: its mass cannot be worked out from its gauge" },
        { Four(Wound + "unit_mass = 6.8\n"), "8,13: `unit_mass` of [[tuning.strings]] 1 is 6.8, not a unit mass this file can hold | 0.2 g/m to 120 g/m | give its unit: `6.8 g/m`, `0.0068 kg/m`, `0.00038 lb/in`" },
        { Four(Wound + "unit_mass = \"6.8 kg/m\"\n"), "8,13: `unit_mass` of [[tuning.strings]] 1 is \"6.8 kg/m\" | 0.2 g/m to 120 g/m | give a unit mass within 0.2 g/m to 120 g/m" },
        // Solid nickel of 1.1684 mm: 8908 kg/m³ × π/4 × 1.1684² mm² = 9.551 g/m, by hand.
        { Four(Wound + "unit_mass = \"68 g/m\"\n"), "8,13: a string of 0.046 in weighs 68 g/m | more than its core, 0 g/m, and not more than solid nickel, 9.551 g/m | look at the unit and the decimal point, or weigh a metre of the string" },
        { Four(Wound + "unit_mass = \"6.8 g/m\"\ncore = 0.05\n"), "9,8: the core is 0.05 in, the whole string 0.046 in | less than 0.046 in | give the diameter of the core alone" },
        { Four("[[tuning.strings]]\nnote = \"E4\"\ngauge = 0.01\nunit_mass = \"1 g/m\"\n"), "7,13: `unit_mass` of [[tuning.strings]] 1 has no meaning here | a plain string has only a note and a gauge: its mass follows from steel | remove it, or say `wound = true`" },
        { Four(Plain) + "[[tuning.also]]\nname = \"low\"\nnotes = \"D2 D2 D2\"\n", "18,9: `notes` of [[tuning.also]] 1 is \"D2 D2 D2\" | 4 notes from the lowest string, with spaces between, such as \"D2 A2 D3\" | write a name and octave for each string: E2, Bb1 or F#3" },
        { Top + "[[tuning.also]]\nname = \"low\"\nnotes = \"D2 D2 D2 D2\"\n", "4,1: other tunings are named, the strings are not described | 4 [[tuning.strings]] first | describe the strings, or remove these tunings" },
    };

    [Theory, MemberData(nameof(EachMistake))]
    public void Each_mistake_is_told_with_its_place(string text, string mistake) => Assert.Equal([mistake], Mistakes(text));
}
