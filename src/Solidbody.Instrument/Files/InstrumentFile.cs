using System.Collections.Immutable;
using Solidbody.Findings;
using Solidbody.Materials;
using Solidbody.Reading;

namespace Solidbody.Instrument.Files;

/// <summary>The instrument file: TOML in, a definition with every default filled in out, or every mistake at once. <c>docs/instrument-file.md</c> lists all keys.</summary>
public static class InstrumentFile
{
    /// <param name="fileName">As the person gave it, for the mistakes.</param>
    public static Result<InstrumentDefinition> Read(string text, string fileName) => TomlFile.Read(text, fileName, ReadInstrument);

    /// <summary>A starter to edit: a six-string of 25 in scale, the main keys in force, every other key as a remark with its default.</summary>
    /// <param name="inches">Whether it is written in inches rather than millimetres.</param>
    public static string Starter(bool inches) => InstrumentStarter.Write(inches);

    /// <summary>Every key with what is allowed and its default, as the reader sees them for one instrument.</summary>
    /// <param name="text">A file without mistakes.</param>
    public static ImmutableArray<KeyNote> Keys(string text) => TomlFile.Describe(text, ReadInstrument);

    static InstrumentDefinition ReadInstrument(TableReader file)
    {
        var (name, basis) = ReadBasis(file);
        var woods = WoodsSection.Read(file);
        basis = basis with { Woods = [.. Woods.All.Select(w => w.Key).Union(woods.Select(w => w.Wood.Key))] };
        var (nut, fretboard, neck, headstock, body, action) = (file.Table("nut"), file.Table("fretboard"), file.Table("neck"), file.Table("headstock"), file.Table("body"), file.Table("action"));

        // The strings run from nut to bridge: most defaults hang on these three.
        var bridgeSpread = BodySection.ReadStringSpread(body, basis);
        var nutValue = NeckSection.ReadNut(nut, basis);
        var strings = new StringFan(basis, nutValue, bridgeSpread);

        var boardValue = FretboardSection.Read(fretboard, strings);
        var boardEnd = basis.LastFret + boardValue.BeyondLastFret;
        var neckValue = NeckSection.Read(neck, basis, boardEnd, boardValue.WidthAtEnd);
        var definition = new InstrumentDefinition
        {
            Name = name,
            Hand = basis.Hand,
            Strings = basis.Strings,
            Scale = basis.Scale,
            Frets = basis.Frets,
            Nut = nutValue,
            Fretboard = boardValue,
            Neck = neckValue,
            Headstock = HeadstockSection.Read(headstock, basis),
            Body = BodySection.Read(body, strings, boardEnd, boardValue.WidthAtEnd, neckValue.Heel.Length),
            Action = ActionSection.Read(action, basis),
            Woods = woods,
            Tuning = TuningSection.Read(file.Table("tuning"), basis),
        };
        ActionSection.RefuseTheFreeMeasure(definition.Action.Free, action, neck, body);
        return definition;
    }

    static (string Name, InstrumentBasis Basis) ReadBasis(TableReader file)
    {
        var name = file.Text("name", 60, null, "what the instrument is called on sheets and programs");
        var hand = file.Choice("hand", [("right", Hand.Right), ("left", Hand.Left)], "right", "a left-handed instrument is the mirrored design");
        var scale = file.Length("scale", 500, 950, null, "scale length: from the nut to the saddles' scale line");
        var isBass = scale >= InstrumentBasis.BassScale;
        var strings = file.Count("strings", 4, 8, isBass ? 4 : 6, "number of strings; a scale of 30 in or more is taken for a bass");
        var frets = file.Count("frets", 12, 27, isBass ? 21 : 22, "number of frets");
        return (name, new InstrumentBasis(hand, strings, scale, frets));
    }
}
