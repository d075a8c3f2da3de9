using Solidbody.Findings;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Fretboards;

/// <summary>Each finding about frets, nut, strings and board fires when one figure of a sound instrument is spoilt, and only then.</summary>
public class FretFindingTests
{
    private static InstrumentDefinition Read(string more) => InstrumentFile.Read($"units = \"mm\"\nname = \"fan\"\n{more}", "fan.toml").Good;

    private const string Single = "scale = 648\n", Fan = "scale_bass = 686\nscale_treble = 648\nstrings = 7\nfrets = 24\n";
    private const string Gauges = "tuning.strings = [" +
        "{ note = \"E2\", gauge = 1.07, wound = true, unit_mass = \"5.8 g/m\" }, { note = \"A2\", gauge = 0.81, wound = true, unit_mass = \"3.4 g/m\" }, { note = \"D3\", gauge = 0.61, wound = true, unit_mass = \"1.9 g/m\" }, " +
        "{ note = \"G3\", gauge = 0.43 }, { note = \"B3\", gauge = 0.33 }, { note = \"E4\", gauge = 0.25 }]\n";
    private const string FanBass = "scale_bass = 914\nscale_treble = 838\nstrings = 5\ntuning.strings = [" +
        "{ note = \"B0\", gauge = 3.3, wound = true, unit_mass = \"45 g/m\" }, { note = \"E1\", gauge = 2.67, wound = true, unit_mass = \"30 g/m\" }, { note = \"A1\", gauge = 2.16, wound = true, unit_mass = \"20 g/m\" }, " +
        "{ note = \"D2\", gauge = 1.65, wound = true, unit_mass = \"11 g/m\" }, { note = \"G2\", gauge = 1.14, wound = true, unit_mass = \"6 g/m\" }]\n";
    private const string Poles = "[[body.pickups]]\nname = \"bridge pickup\"\ncentre = 606\npole_spread = ";

    /// <summary>The sound file, and the line that spoils it.</summary>
    public static TheoryData<string, Severity, string, string, string> Spoilt => new()
    {
        { "FRET-01", Severity.Warns, Fan, "perpendicular_fret = 0\n", "" },
        { "FRET-02", Severity.Warns, Single, "frets = 29\nscale = 520\n", "scale" },
        { "FRET-03", Severity.Warns, Single + "fretboard.blind_slots = true\n", "fretboard.blind_slots_inside = 3.4\n", "" },
        { "FRET-03", Severity.Stops, Single + "fretboard.blind_slots = true\n", "fretboard.blind_slots_inside = 5\n", "" },
        { "FRET-04", Severity.Warns, FanBass, "nut.spacing = \"gaps\"\n", "" },
        { "NUT-01", Severity.Warns, Single + Gauges, "nut.edge_distance = 2\n", "" },
        { "NUT-02", Severity.Stops, Single, "nut.spacing = \"gaps\"\n", "" },
        { "NUT-03", Severity.Warns, Single, "nut.string_spread = 24\n", "" },
        { "NUT-03", Severity.Warns, Single + Gauges, "nut.string_spread = 20\n", "" },
        { "STRING-02", Severity.Stops, Single, "body.bridge.spread_least = 50\nbody.bridge.spread_most = 52\n", "" },
        { "STRING-03", Severity.Stops, Fan, "body.bridge.follows_fan = false\n", "" },
        { "PICKUP-04", Severity.Warns, Single + Poles + "51", "", "pole_spread" },
        { "BOARD-04", Severity.Warns, Fan, "fretboard.radius = 150\n", "" },
        { "BOARD-05", Severity.Stops, Single, "fretboard.overhang = 0\nfretboard.beyond_last_fret = 20\nfrets = 24\n[[body.pickups]]\nname = \"neck pickup\"\ncentre = 515\n", "" },
        { "BOARD-06", Severity.Warns, Single + "nut.zero_fret = true\n", "nut.zero_fret_set_back = 2\n", "" },
        { "BOARD-07", Severity.Stops, Single + "fretboard.overhang = 12\n", "neck.heel.thickness = 15\n", "" },
    };

    [Theory, MemberData(nameof(Spoilt))]
    public void A_finding_fires_only_when_its_figure_is_spoilt(string code, Severity severity, string sound, string spoils, string replaces)
    {
        var spoilt = replaces switch
        {
            "scale" => spoils,
            "pole_spread" => sound.Replace("51", "44", StringComparison.Ordinal),
            _ => sound + spoils,
        };
        Assert.Equal(severity, Fires.OnlyWhenSpoilt(code, Read(sound), Read(spoilt)).Severity);
    }
}
