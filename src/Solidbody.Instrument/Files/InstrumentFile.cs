using System.Collections.Immutable;
using Solidbody.Drawings;
using Solidbody.Findings;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The instrument file: TOML in, a definition with every default filled in out, or every mistake at once. <c>docs/instrument-file.md</c> lists all keys.</summary>
public static class InstrumentFile
{
    /// <param name="fileName">As the person gave it, for the mistakes.</param>
    /// <param name="drawings">Where the drawings lie that it names; null where there are none.</param>
    public static Result<InstrumentDefinition> Read(string text, string fileName, IDrawings? drawings = null)
    {
        var desk = new DrawingDesk(drawings);
        var read = TomlFile.Read(text, fileName, file => ReadInstrument(file, desk));
        return read with { Mistakes = [.. read.Mistakes, .. desk.Mistakes] };
    }

    /// <summary>A starter to edit: a six-string of 25 in scale, the main keys in force, every other key as a remark with its default.</summary>
    /// <param name="inches">Whether it is written in inches rather than millimetres.</param>
    public static string Starter(bool inches) => InstrumentStarter.Write(inches);

    /// <summary>Every key with what is allowed and its default, as the reader sees them for one instrument.</summary>
    /// <param name="text">A file without mistakes.</param>
    public static ImmutableArray<KeyNote> Keys(string text, IDrawings? drawings = null) => TomlFile.Describe(text, file => ReadInstrument(file, new DrawingDesk(drawings)));

    static InstrumentDefinition ReadInstrument(TableReader file, DrawingDesk drawings)
    {
        var (name, basis) = ReadBasis(file);
        var woods = WoodsSection.Read(file);
        basis = basis with { Woods = [.. Woods.All.Select(w => w.Key).Union(woods.Select(w => w.Wood.Key))] };
        var (nut, fretboard, neck, headstock, body, action) = (file.Table("nut"), file.Table("fretboard"), file.Table("neck"), file.Table("headstock"), file.Table("body"), file.Table("action"));

        // The strings run from nut to bridge: most defaults hang on these three.
        var boughtBody = BoughtBodySection.Read(file, basis);
        var bridgeSpread = BodySection.ReadStringSpread(boughtBody is null ? body : file.Table(BoughtBodySection.Key), basis);
        var nutValue = NeckSection.ReadNut(nut, basis);
        var boughtNeck = BoughtNeckSection.Read(file, basis, nutValue);
        var strings = new StringFan(basis, nutValue, bridgeSpread);

        var boardValue = FretboardSection.Read(fretboard, strings);
        if (boughtNeck is not null) boardValue = BoughtNeckSection.Board(boardValue, strings, boughtNeck);
        else if (boughtBody is not null) boardValue = BoughtBodySection.Board(fretboard, boardValue, strings, boughtBody);
        var layout = strings.Layout(boardValue);
        var heelWidth = Math.Round(2 * layout.HalfWidth(layout.HeelEnd), 1);
        var neckValue = NeckSection.Read(neck, basis, layout, heelWidth);
        if (boughtNeck is not null) neckValue = neckValue with { Heel = BoughtNeckSection.Heel(neckValue.Heel, boughtNeck) };
        if (boughtBody is not null && neckValue.Joint == JointKind.Through)
            neck.Refuse("joint", "the neck goes through a body that is bought", "bolt-on or set", "remove it: a bought body has a pocket");
        var pocket = boughtNeck is null ? PocketDefaults.Own(neckValue.Heel.Length) : BoughtNeckSection.Pocket(boughtNeck);
        var bodyValue = BodySection.Read(body, strings, layout, heelWidth, pocket, CoreSection.Seat(neck, neckValue), drawings);
        if (boughtBody is not null) bodyValue = BoughtBodySection.Body(bodyValue, boughtBody, BridgeSection.Read(file.Table(BoughtBodySection.Key).Table("bridge"), strings, hasTremolo: false));
        var definition = new InstrumentDefinition
        {
            Name = name,
            Unit = file.Unit,
            Hand = basis.Hand,
            Strings = basis.Strings,
            Scale = basis.Scale,
            Fan = basis.Fan,
            Frets = basis.Frets,
            Nut = nutValue,
            Fretboard = boardValue,
            Neck = neckValue,
            Headstock = HeadstockSection.Read(headstock, basis, layout),
            Body = bodyValue,
            BoughtNeck = boughtNeck?.Neck,
            BoughtBody = boughtBody?.Body,
            Action = ActionSection.Read(action, basis),
            Woods = woods,
            Weights = WeightsSection.Read(file.Table("weights"), basis),
            Hanging = WeightsSection.ReadHanging(file.Table("hanging")),
            Buying = BuyingSection.Read(file.Table("buying")),
            Seasons = SeasonsSection.Read(file.Table("seasons")),
            Tuning = TuningSection.Read(file.Table("tuning"), basis),
            Overrides = OverrideSection.Read(file),
        };
        ActionSection.RefuseTheFreeMeasure(definition.Action.Free, neckValue.Joint, action, neck, body);
        return definition;
    }

    static (string Name, InstrumentBasis Basis) ReadBasis(TableReader file)
    {
        var name = file.Text("name", 60, null, "what the instrument is called on sheets and programs");
        var hand = file.Choice("hand", [("right", Hand.Right), ("left", Hand.Left)], "right", "a left-handed instrument is the mirrored design");
        var (scale, fan) = ReadScale(file);
        var isBass = scale >= InstrumentBasis.BassScale;
        var strings = file.Count("strings", 4, 9, isBass ? 4 : 6, "number of strings; a scale of 30 in or more is taken for a bass");
        var frets = file.Count("frets", 12, 29, isBass ? 21 : 22, "number of frets");
        return (name, new InstrumentBasis(hand, strings, scale, frets, fan));
    }

    /// <summary>Shortest and longest scale, mm; the highest fret that can stand square: two octaves up.</summary>
    const double ShortestScale = 500, LongestScale = 950, HighestSquareFret = 24;
    /// <summary>A figure a person copies from the defaults is rounded this far, mm.</summary>
    const double Copied = 0.05;

    /// <summary>A single scale, or the lowest and the highest string's; the middle one is then their mean.</summary>
    static (double Scale, FanDefinition? Fan) ReadScale(TableReader file)
    {
        const string whatScale = "scale length: from the nut to the saddles' scale line; of fanned frets the middle one, which follows";
        const string whatBass = "fanned frets: the lowest string's scale, in the neck's direction", whatTreble = "fanned frets: the highest string's scale";
        double scale, bass, treble;
        if (file.Has("scale_bass") || file.Has("scale_treble"))
        {
            bass = file.Length("scale_bass", ShortestScale, LongestScale, null, whatBass);
            treble = file.Length("scale_treble", ShortestScale, LongestScale, null, whatTreble);
            var middle = (bass + treble) / 2;
            scale = file.Length("scale", ShortestScale, LongestScale, middle, whatScale);
            if (file.IsSound && treble > bass)
                file.Refuse("scale_treble", $"the highest string's scale of {file.Show(treble)} is longer than the lowest's", $"at most {file.Show(bass)}", "exchange the two");
            if (file.IsSound && Math.Abs(scale - middle) > Copied)
                file.Refuse("scale", $"the scale of {file.Show(scale)} is not the middle of the two beside it", file.Show(middle), "leave `scale` out: it follows from the other two");
            scale = middle;
        }
        else
        {
            scale = bass = treble = file.Length("scale", ShortestScale, LongestScale, null, whatScale);
            file.Length("scale_bass", ShortestScale, LongestScale, scale, whatBass);
            file.Length("scale_treble", ShortestScale, LongestScale, scale, whatTreble);
        }
        // Between the fifth fret and the ninth both hands find it easiest; common practice, no source.
        var square = file.Number("perpendicular_fret", 0, HighestSquareFret, 7, "fanned frets: the one that stands square to the neck; 0 is the nut, parts of a fret count");
        return (scale, bass > treble ? new FanDefinition(bass - treble, square) : null);
    }
}
