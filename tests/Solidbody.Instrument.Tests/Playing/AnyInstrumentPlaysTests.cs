using CsCheck;
using Solidbody.Instrument.Files;

namespace Solidbody.Instrument.Tests.Playing;

/// <summary>Whatever a file says, the figures of string height, path and intonation are numbers, and what is solved for agrees with what was asked.</summary>
public class AnyInstrumentPlaysTests
{
    private static readonly FreeMeasure[] Measures = Enum.GetValues<FreeMeasure>();

    [Fact]
    public void Any_file_gives_numbers() => WholeRangeTests.Any.Select(Gen.Int[0, Measures.Length - 1], Gen.Bool).Sample((text, free, compensated) => Holds(text, Measures[free], compensated), iter: 150);

    [Fact, Trait("speed", "slow")]
    public void So_do_a_thousand_files() => WholeRangeTests.Any.Select(Gen.Int[0, Measures.Length - 1], Gen.Bool).Sample((text, free, compensated) => Holds(text, Measures[free], compensated), iter: 1_000);

    private static void Holds(string text, FreeMeasure free, bool compensated)
    {
        if (InstrumentFile.Read(text, "any") is not { IsGood: true } read) return;
        var d = read.Good;
        // As many of the band guitar's strings as the instrument has, the outermost repeated.
        d = d with
        {
            Tuning = new(440, [.. Enumerable.Range(0, d.Strings).Select(i => Workshop.SixStrings.Strings[Math.Min(i, 5)])]),
            Nut = d.Nut with { Compensated = compensated },
            Action = d.Action with { Free = free },
        };
        var design = Designer.Design(d);
        if (design.Figures.Heights is not { } heights) { Assert.Empty(design.Parts); return; }
        Assert.All(heights.Strings, s => Assert.True(double.IsFinite(s.OverFret1 + s.OverFret12 + s.OverLastFret + s.SaddleHeight + s.Swing)));
        Assert.True(double.IsFinite(heights.NeckAngle + heights.Wedge + heights.ScaleLine + heights.BoardOverBody));
        Assert.Equal(d.Action.At12Bass, heights.Strings[0].OverFret12, 1e-9);
        Assert.Equal(d.Action.At12Treble, heights.Strings[^1].OverFret12, 1e-9);
        Assert.All(design.Figures.Paths, p => Assert.True(double.IsFinite(p.NutBreak + p.NutTurn + p.PostBreak + p.WindingsLeft + p.SaddleBreak + p.NutForce!.Value + p.SaddleForce!.Value + (p.Tree?.X ?? 0) + (p.Tree?.Y ?? 0))));
        Assert.All(design.Figures.Intonation!.Strings, s => Assert.True(double.IsFinite(s.SaddleSetBack + s.SetBackForOctave + s.NutShift + s.RmsBefore + s.RmsAfter + s.WorstBefore.Cents + s.WorstAfter.Cents + s.Before.Sum() + s.After.Sum())));
        Assert.DoesNotContain(design.Findings, f => (f.Figure + f.Limit + f.Remedy).Contains("NaN", StringComparison.Ordinal));
    }
}
