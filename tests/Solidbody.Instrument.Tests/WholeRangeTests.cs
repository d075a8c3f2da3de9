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
        from joint in OneOf("bolt-on", "bolt-on", "set", "through")
        from family in OneOf("symmetric", "offset", "single", "bass", "travel")
        select $"units = \"mm\"\nname = \"any\"\nscale_bass = {Math.Min(950, scale + fan)}\nscale_treble = {scale}\nperpendicular_fret = {square}\nstrings = {strings}\nfrets = {frets}\nhand = \"{hand}\"\nbody.outline.family = \"{family}\"\nneck.joint = \"{joint}\"\n";

    /// <summary>A share of all keys with a range, drawn anew: from an instrument with one odd figure to one that is odd throughout.</summary>
    internal static readonly Gen<string> Any = Gen.Select(Basis, OneOf(0.002, 0.01, 0.03, 0.1, 0.3), Gen.Int).Select((text, share, seed) =>
    {
        // Evenly drawn: a generator of doubles that shrink draws 0 and other round numbers far too often for a share.
        var random = new Random(seed);
        double[] draws = [.. Enumerable.Range(0, 1_000).Select(_ => random.NextDouble())];
        var drawn = new StringBuilder(text);
        var i = 0;
        foreach (var note in InstrumentFile.Keys(text).Where(n => n.Table != "" && n.Element < 0))
        {
            var (chosen, at) = (draws[i++ % draws.Length], draws[i++ % draws.Length]);
            if (chosen < share && Value(note, at) is { } value) drawn.Append(CultureInfo.InvariantCulture, $"{note.Table}.{note.Key} = {value}\n");
        }
        return Sound(drawn.Append(draws[0] < 0.5 ? Strings(text, draws) : "").ToString());
    });

    /// <summary>The text less the lines the reader refuses, so that most of what is drawn is an instrument at last.</summary>
    private static string Sound(string text)
    {
        for (var round = 0; round < Rounds; round++)
        {
            var refused = InstrumentFile.Read(text, "any").Mistakes.Select(m => m.Line - 1).ToHashSet();
            if (refused.Count == 0) break;
            text = string.Join('\n', text.Split('\n').Where((line, i) => !refused.Contains(i) || line.StartsWith("units", StringComparison.Ordinal)));
        }
        return text;
    }

    private const int Rounds = 8;

    /// <summary>Strings of any note and gauge; every other one wound, its mass within what metal allows.</summary>
    private static string Strings(string text, double[] draws)
    {
        var tuning = new StringBuilder();
        for (var i = 0; i < InstrumentFile.Read(text, "any").Value?.Strings; i++)
        {
            var gauge = Math.Round(0.2 + 2 * draws[3 * i] * draws[3 * i + 1], 3);
            tuning.Append(CultureInfo.InvariantCulture, $"[[tuning.strings]]\nnote = \"{NoteName.Of(new Note(23 + (int)(50 * draws[3 * i + 2])))}\"\ngauge = {gauge}\n");
            // Steel of the whole width weighs 7.85 g/cm³ · π/4 · gauge²; a winding leaves some of it out.
            if (i % 2 == 0) tuning.Append(CultureInfo.InvariantCulture, $"wound = true\nunit_mass = \"{Math.Max(0.2, 7.85 * Math.PI / 4 * gauge * gauge * 0.9):0.###} g/m\"\n{(gauge > 0.5 ? FormattableString.Invariant($"core = {0.4 * gauge:0.###}\n") : "")}");
        }
        return tuning.ToString();
    }

    /// <summary>A value a part of the way through a key's range; null for a key without one.</summary>
    private static string? Value(KeyNote note, double at)
    {
        if (note is { Table: "headstock", Key: "tuners_bass" or "tuners_treble" } or { Table: "body.outline", Key: "family" or "drawing" } or { Table: "neck", Key: "joint" }) return null;
        if (Range().Match(note.Allowed) is not { Success: true } range)
        {
            if (note.Allowed.StartsWith("true", StringComparison.Ordinal)) return at < 0.5 ? "true" : "false";
            string[] words = note.Allowed.StartsWith("a text", StringComparison.Ordinal) ? [] : note.Allowed.Split([", ", " or "], StringSplitOptions.None);
            return note.Default?.StartsWith('"') == true && words.Length > 1 ? $"\"{words[(int)(at * words.Length) % words.Length]}\"" : null;
        }
        var (least, most) = (double.Parse(range.Groups["least"].Value, CultureInfo.InvariantCulture), double.Parse(range.Groups["most"].Value, CultureInfo.InvariantCulture));
        // The ends themselves are drawn often: that is where a rule is off by one.
        var value = Math.Round(Math.Clamp(least + (1.2 * at - 0.1) * (most - least), least, most), note.Key == "pieces" ? 0 : 3);
        var number = value.ToString(CultureInfo.InvariantCulture);
        return range.Groups["unit"].Value.Trim() is not ("" or "mm") and var unit ? $"\"{number} {unit}\"" : number;
    }

    [GeneratedRegex(@"^(?<least>-?[\d.]+)(?<unit> [^ ]+)? to (?<most>-?[\d.]+)")]
    private static partial Regex Range();

    [Fact]
    public void Any_file_gives_finite_parts_or_says_which_measure_stops_it() => Any.Sample(Holds, iter: 100);

    [Fact, Trait("speed", "slow")]
    public void So_do_twelve_hundred_files() => Any.Sample(Holds, iter: 1_200);

    private static void Holds(string text)
    {
        var result = InstrumentFile.Read(text, "any");
        // The reader itself refuses strings that spread beyond their nut.
        if (!result.IsGood) { Assert.All(result.Mistakes, m => Assert.False(m.Wrong == "" || m.Remedy == "")); return; }
        var design = Designer.Design(result.Good);
        Assert.Empty(NotFinite.In(design.Figures));
        Assert.True(design.Parts.Length == 3 || design.Findings.Any(f => f.Severity == Severity.Stops), "no parts and no reason");
        foreach (var f in design.Findings)
        {
            Assert.All([f.Code, f.Title, f.Place, f.Figure, f.Limit, f.Source, f.Remedy], t => Assert.False(string.IsNullOrWhiteSpace(t), $"{f}"));
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
            Assert.All(part.Ledges.SelectMany(l => l.Inside.Loops).SelectMany(l => l.Points), p => Assert.True(double.IsFinite(p.X + p.Y), $"{part.Name}: ledge {p}"));
            Assert.All(part.Measures, m => Assert.True(double.IsFinite(m.Expected), $"{part.Name}: {m}"));
        }
    }
}
