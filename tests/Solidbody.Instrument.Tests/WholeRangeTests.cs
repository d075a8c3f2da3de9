using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Solidbody.Findings;
using Solidbody.Instrument.Files;
using Solidbody.Reading;

namespace Solidbody.Instrument.Tests;

/// <summary>Laws over everything a file may say: many keys at once, each anywhere in its range as the reader states it.</summary>
public partial class WholeRangeTests
{
    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static readonly Gen<string> Basis =
        from scale in Gen.Int[500, 950]
        from fan in OneOf(0, 0, 12, 30, 60)
        from square in Gen.Int[0, 24]
        from strings in Gen.Int[4, 9]
        from frets in Gen.Int[12, 29]
        from hand in OneOf("right", "left")
        from family in OneOf("symmetric", "offset", "single", "bass", "travel")
        select $"units = \"mm\"\nname = \"any\"\nscale_bass = {Math.Min(950, scale + fan)}\nscale_treble = {scale}\nperpendicular_fret = {square}\nstrings = {strings}\nfrets = {frets}\nhand = \"{hand}\"\nbody.outline.family = \"{family}\"\n";

    /// <summary>A share of all keys with a range, drawn anew: from an instrument with one odd figure to one that is odd throughout.</summary>
    internal static readonly Gen<string> Any = Gen.Select(Basis, OneOf(0.01, 0.03, 0.1, 0.3), Gen.Double[0, 1].Array[400]).Select((text, share, draws) =>
    {
        var drawn = new StringBuilder(text);
        var i = 0;
        foreach (var note in InstrumentFile.Keys(text).Where(n => n.Table != "" && n.Element < 0))
        {
            var (chosen, at) = (draws[i++ % draws.Length], draws[i++ % draws.Length]);
            if (chosen < share && Value(note, at) is { } value) drawn.Append(CultureInfo.InvariantCulture, $"{note.Table}.{note.Key} = {value}\n");
        }
        return drawn.ToString();
    });

    /// <summary>A value a part of the way through a key's range; null for a key without one.</summary>
    private static string? Value(KeyNote note, double at)
    {
        if (note is { Table: "headstock", Key: "tuners_bass" or "tuners_treble" }) return null;
        if (Range().Match(note.Allowed) is not { Success: true } range) return note.Allowed.StartsWith("true", StringComparison.Ordinal) ? (at < 0.5 ? "true" : "false") : null;
        var (least, most) = (double.Parse(range.Groups["least"].Value, CultureInfo.InvariantCulture), double.Parse(range.Groups["most"].Value, CultureInfo.InvariantCulture));
        // The ends themselves are drawn often: that is where a rule is off by one.
        var value = Math.Round(Math.Clamp(least + (1.2 * at - 0.1) * (most - least), least, most), note.Key == "pieces" ? 0 : 3);
        var number = value.ToString(CultureInfo.InvariantCulture);
        return range.Groups["unit"].Value.Trim() == "deg" ? $"\"{number} deg\"" : number;
    }

    [GeneratedRegex(@"^(?<least>-?[\d.]+)(?<unit> \w+)? to (?<most>-?[\d.]+)")]
    private static partial Regex Range();

    [Fact]
    public void Any_file_gives_finite_parts_or_says_which_measure_stops_it() => Any.Sample(Holds, iter: 300);

    [Fact, Trait("speed", "slow")]
    public void So_do_three_thousand_files() => Any.Sample(Holds, iter: 3_000);

    private static void Holds(string text)
    {
        var result = InstrumentFile.Read(text, "any");
        // The reader itself refuses strings that spread beyond their nut.
        if (!result.IsGood) { Assert.All(result.Mistakes, m => Assert.False(m.Wrong == "" || m.Remedy == "")); return; }
        var design = Designer.Design(result.Good);
        Assert.True(design.Parts.Length == 3 || design.Findings.Any(f => f.Severity == Severity.Stops), "no parts and no reason");
        foreach (var f in design.Findings)
        {
            Assert.All([f.Code, f.Title, f.Place, f.Figure, f.Limit, f.Source, f.Remedy], t => Assert.False(string.IsNullOrWhiteSpace(t)));
            Assert.DoesNotContain("NaN", f.Figure + f.Limit + f.Place, StringComparison.Ordinal);
        }
        foreach (var part in design.Parts)
        {
            var b = part.Bounds;
            Assert.All([b.X0, b.Y0, b.Z0, b.X1, b.Y1, b.Z1], v => Assert.True(double.IsFinite(v), $"{part.Name}: {b}"));
            Assert.All(part.Outline.Loops.SelectMany(l => l.Points), p => Assert.True(double.IsFinite(p.X + p.Y), $"{part.Name}: outline {p}"));
            Assert.All(part.Pockets.SelectMany(k => k.Region.Loops).SelectMany(l => l.Points), p => Assert.True(double.IsFinite(p.X + p.Y), $"{part.Name}: room {p}"));
            Assert.All(part.Holes, h => Assert.True(double.IsFinite(h.Centre.X + h.Centre.Y + h.Diameter + h.Mouth + h.Reach + h.Tip), $"{part.Name}: {h}"));
            Assert.All(part.HandBores, h => Assert.True(double.IsFinite(h.A.X + h.A.Y + h.A.Z + h.B.X + h.B.Y + h.B.Z), $"{part.Name}: {h}"));
            Assert.All(part.Measures, m => Assert.True(double.IsFinite(m.Expected), $"{part.Name}: {m}"));
        }
    }
}
