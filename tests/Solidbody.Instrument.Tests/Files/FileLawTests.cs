using System.Globalization;
using CsCheck;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Files;

/// <summary>Laws over random instruments: scale 22 to 36 in, single or fanned, 4 to 9 strings, both hands, every outline family.</summary>
public class FileLawTests
{
    static readonly string[] Families = ["symmetric", "offset", "single", "bass", "travel"];

    static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    static readonly Gen<string> Minimal =
        from scale in Gen.Int[5588, 9144]
        from fan in OneOf(0, 0, 18, 40)
        from strings in Gen.Int[4, 9]
        from frets in Gen.Int[18, 29]
        from hand in Gen.Int[0, 1].Select(i => i == 0 ? "right" : "left")
        from family in Gen.Int[0, 4].Select(i => Families[i])
        from bass in Gen.Int[0, strings]
        select FormattableString.Invariant($"units = \"mm\"\nname = \"any\"\nscale_bass = {scale / 10.0 + fan / 2.0}\nscale_treble = {scale / 10.0 - fan / 2.0}\nstrings = {strings}\nfrets = {frets}\nhand = \"{hand}\"\nbody.outline.family = \"{family}\"\nheadstock.tuners_bass = {bass}\n");

    [Fact]
    public void Every_minimal_instrument_reads_without_a_mistake() =>
        Minimal.Sample(text => InstrumentFile.Read(text, "any").IsGood);

    [Fact] // A default that is out of its own range would be refused when a person writes it down.
    public void Every_default_is_itself_allowed_and_means_the_same_when_written() => Minimal.Sample(text =>
    {
        var given = InstrumentFile.Read(text, "any").Good;
        var written = InstrumentFile.Read(FullText.Of(InstrumentFile.Keys(text), given), "written");
        Assert.Empty(written.Mistakes);
        return Records.Rounded(given) == Records.Rounded(written.Good);
    });

    /// <summary>Any value within its range is taken, and is what the definition then holds: written out in full once more it reads the same.</summary>
    [Fact]
    public void Any_value_within_its_range_is_taken() => Gen.Select(Minimal, Gen.Int[0, 10_000], Gen.Double[0, 1]).Sample((text, which, part) =>
    {
        var notes = InstrumentFile.Keys(text);
        var ranged = notes.Where(n => n.Table != "" && n.Element < 0 && n.Allowed.EndsWith(" mm", StringComparison.Ordinal)).ToArray();
        var note = ranged[which % ranged.Length];
        var ends = note.Allowed.Split(" mm", StringSplitOptions.RemoveEmptyEntries);
        var (least, most) = (Number(ends[0]), Number(ends[1].Replace(" to ", "", StringComparison.Ordinal)));
        var value = Math.Round(least + part * (most - least), 4);
        var changed = notes.Replace(note, note with { Default = value.ToString(CultureInfo.InvariantCulture) });

        var result = InstrumentFile.Read(FullText.Of(changed, InstrumentFile.Read(text, "any").Good), "changed");
        // The one comparison of two keys: strings that do not fit their nut.
        if (note is { Table: "nut", Key: "width" or "string_spread" } && !result.IsGood) return result.Mistakes.Single().Wrong.StartsWith("the nut is", StringComparison.Ordinal);
        // And a bend that would come round to the body's other side.
        if (note is { Table: "body.arm_contour", Key: "bend_radius" } && value is > 0 and < 600) return result.Mistakes.Length == 1;
        // And an edge that is given beside the width that follows from it.
        if (note is { Table: "nut", Key: "edge_distance" } or { Table: "fretboard", Key: "edge_at_last_fret" } && value > 0) return result.Mistakes[0].Allowed == "one of the two";
        // And a chamfer beside the radius that stands written already.
        if (note is { Table: "body.edges", Key: "front_chamfer" or "back_chamfer" } && value > 0) return result.Mistakes.Single().Allowed == "one of the two";
        Assert.Empty(result.Mistakes);
        // What is not fitted is not part of the definition.
        Assert.True(Records.Text(result.Good).Contains(value.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            || note.Key is "string_through_at" or "zero_fret_set_back" or "blind_slots_inside" or "scarf_stock"
            || note.Table is "body.arm_contour" or "body.belly_contour" or "body.top" or "body.binding" or "body.tremolo" or "body.tremolo.cover" or "body.jack.plate", $"{note}: {value}");
        return true;
    });

    [Fact]
    public void A_damaged_file_is_read_or_refused_with_places_and_never_throws()
    {
        var text = Repository.ReadExample("school-six.toml");
        var lines = text.Split('\n').Length;
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 40], Gen.String[Gen.Char["\"'[]{}=.,#\\\n u0-9é/"], 0, 4]).Sample((at, cut, put) =>
        {
            var damaged = text[..at] + put + text[Math.Min(text.Length, at + cut)..];
            var result = InstrumentFile.Read(damaged, "damaged");
            return result.Mistakes.All(m => m.Line >= 1 && m.Line <= lines + 5 && m.Column >= 1 && m.Wrong != "" && m.Allowed != "" && m.Remedy != "")
                && result.IsGood == result.Value is not null;
        }, iter: 1_000);
    }

    static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
